package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.List;

/** Reads a log: from lines of text to sheets of rows with known columns. */
public final class LogTable {
  private LogTable() {}

  /**
   * Finds out how a log is written.
   *
   * @param nominals_V outputs that a unit may have, V: of the family if it is known, else of all
   * @return one sheet for each different header, in the order of the file
   * @throws corewright.files.BadFile if it cannot be read, with line, column and remedy
   */
  public static List<Sheet> read(LogText text, Choices choices, double[] nominals_V) {
    List<SheetSample> samples = new Survey(text, choices).sheets();
    List<String> keys = samples.stream().map(SheetSample::key).toList();
    List<Sheet> sheets = new ArrayList<>();
    for (SheetSample sample : samples) {
      ColumnRoles roles = new ColumnRoles(text.name(), sample, choices);
      TimeColumns times = TimeColumns.find(text.name(), sample, roles.facts(), choices);
      List<Column> columns = roles.columns(nominals_V, times);
      LostMarks.refuse(text.name(), sample, columns, times, choices);
      sheets.add(new Sheet(text, sample, keys, columns, roles.facts(), times));
    }
    return sheets;
  }
}
