package corewright.bench.log.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What the sample shows of one column. */
final class ColumnFacts {
  /** Seventeen letters and digits without I, O and Q: ISO 3779, from memory. */
  private static final Pattern IDENTITY = Pattern.compile("[A-HJ-NPR-Z0-9]{17}");

  /** What a spreadsheet makes of 10.2: a day of February. */
  private static final Pattern DATE =
      Pattern.compile(
          "\\d{1,2}[-. /]{1,2}\\p{L}{3,4}\\.?|\\p{L}{3,4}[-."
              + " ]{1,2}\\d{1,2}|\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}");

  private static final Pattern ALL_DIGITS = Pattern.compile("[0-9]+");

  private final int index;
  private final Label label;
  private final char decimal;
  private final double[] values;
  private final double[] sorted;
  private double numeric;
  private double clocks;
  private double identities;
  private double dates;
  private Optional<LogUnit> cellUnit = Optional.empty();

  private ColumnFacts(SheetSample sheet, int column, List<String> cells, char decimal) {
    this.index = column;
    this.label = sheet.label(column);
    this.decimal = decimal;
    this.values = new double[cells.size()];
    look(cells);
    this.sorted = Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
  }

  static ColumnFacts of(SheetSample sheet, int column) {
    List<String> cells = cells(sheet, column);
    return new ColumnFacts(sheet, column, cells, decimal(cells, sheet.dialect().decimal()));
  }

  /** The same column read with another decimal mark. */
  ColumnFacts under(SheetSample sheet, char mark) {
    return new ColumnFacts(sheet, index, cells(sheet, index), mark);
  }

  private static List<String> cells(SheetSample sheet, int column) {
    return sheet.rows().stream().map(r -> column < r.size() ? r.get(column) : "").toList();
  }

  private void look(List<String> cells) {
    int filled = 0;
    for (int i = 0; i < values.length; i++) {
      String cell = cells.get(i);
      values[i] = NumberCell.value(cell, decimal);
      if (cell.isEmpty()) {
        continue;
      }
      filled++;
      if (!Double.isNaN(values[i])) {
        numeric++;
        cellUnit = cellUnit.or(() -> LogUnit.of(NumberCell.unit(cell, decimal)));
        values[i] *= factor(cell);
      } else if (ClockCell.of(cell).form() != ClockCell.Form.NONE) {
        clocks++;
      }
      if (DATE.matcher(cell).matches()) {
        dates++;
      }
      if (IDENTITY.matcher(cell).matches() && !ALL_DIGITS.matcher(cell).matches()) {
        identities++;
      }
    }
    double all = Math.max(1, filled);
    numeric /= all;
    clocks /= all;
    identities /= all;
    dates /= all;
  }

  /**
   * What brings a cell with a unit of its own to the unit of the first such cell: tools that range
   * by themselves write 9.8 V and then 980 mV. 1 where the cell has no unit; NaN where it has one
   * of another kind.
   */
  double factor(String cell) {
    if (cellUnit.isEmpty()) {
      return 1;
    }
    Optional<LogUnit> own = LogUnit.of(NumberCell.unit(cell, decimal));
    boolean other = own.filter(u -> u.kind() != cellUnit.get().kind()).isPresent();
    return other ? Double.NaN : own.map(u -> u.scale() / cellUnit.get().scale()).orElse(1.0);
  }

  private static char decimal(List<String> cells, char usual) {
    double points = 0;
    double commas = 0;
    for (String cell : cells) {
      points += NumberCell.credit(cell, '.');
      commas += NumberCell.credit(cell, ',');
    }
    if (points == commas) {
      return usual;
    }
    return points > commas ? '.' : ',';
  }

  /** Counted from 0. */
  int index() {
    return index;
  }

  Label label() {
    return label;
  }

  /** The mark under which most of its cells are numbers. */
  char decimal() {
    return decimal;
  }

  /** As printed, one a row of the sample; NaN where there is no number. */
  double[] values() {
    return values.clone();
  }

  /** The numbers among them, ascending. */
  double[] sorted() {
    return sorted.clone();
  }

  /** Share of the filled cells that are numbers. */
  double numeric() {
    return numeric;
  }

  /** Share of the filled cells that are times of day. */
  double clocks() {
    return clocks;
  }

  /** Share of the filled cells that are days of the calendar. */
  double dates() {
    return dates;
  }

  /** Share of the filled cells that look like a vehicle's identity number. */
  double identities() {
    return identities;
  }

  /** As the name states it, else as the cells carry it. */
  Optional<LogUnit> unit() {
    return label.unit().or(() -> cellUnit);
  }

  boolean isA(LogUnit.Kind kind) {
    return unit().filter(u -> u.kind() == kind).isPresent();
  }

  boolean empty() {
    return sorted.length == 0;
  }

  /** The middle of all numbers, as printed; NaN without any. */
  double median() {
    return quantile(0.5);
  }

  /** The number below which this share of them lies. */
  double quantile(double share) {
    return empty() ? Double.NaN : sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
  }

  double least() {
    return quantile(0);
  }

  double greatest() {
    return quantile(1);
  }

  /** The share of the numbers within these bounds. */
  double within(double low, double high) {
    long in = Arrays.stream(sorted).filter(v -> v >= low && v <= high).count();
    return empty() ? 0 : in / (double) sorted.length;
  }
}
