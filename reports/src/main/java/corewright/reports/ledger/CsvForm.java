package corewright.reports.ledger;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A table as {@link Csv}: for spreadsheets. Nothing written and an empty text look alike. */
final class CsvForm implements TableForm {
  private final BufferedWriter to;

  CsvForm(Path file, List<Column> columns) throws IOException {
    to = Files.newBufferedWriter(file);
    Csv.row(to, columns.stream().map(Column::name).toList());
  }

  @Override
  public void row(List<@Nullable Object> cells) throws IOException {
    Csv.row(to, cells.stream().map(cell -> cell == null ? "" : cell.toString()).toList());
  }

  @Override
  public void close() throws IOException {
    to.close();
  }
}
