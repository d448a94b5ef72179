package corewright.reports.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Every form at once: one way through the table makes all of its files. */
record TableForms(List<TableForm> forms) implements TableForm {

  /**
   * @param name of the files before their ending
   */
  static TableForms of(Path folder, String name, List<Column> columns) throws IOException {
    return new TableForms(
        List.of(
            new CsvForm(folder.resolve(name + ".csv"), columns),
            new JsonForm(folder.resolve(name + ".json"), columns),
            new HdfForm(folder, name, columns)));
  }

  @Override
  public void row(List<@Nullable Object> cells) throws IOException {
    for (TableForm form : forms) {
      form.row(cells);
    }
  }

  @Override
  public void close() throws IOException {
    Optional<IOException> first = Optional.empty();
    for (TableForm form : forms) { // a full disk fails all of them, and none is left open
      try {
        form.close();
      } catch (IOException failed) {
        first.ifPresent(f -> f.addSuppressed(failed));
        first = first.or(() -> Optional.of(failed));
      }
    }
    if (first.isPresent()) {
      throw first.get();
    }
  }
}
