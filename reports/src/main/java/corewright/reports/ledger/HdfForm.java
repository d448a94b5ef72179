package corewright.reports.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.jhdf.HdfFile;
import io.jhdf.WritableHdfFile;
import io.jhdf.api.DatasetCreationOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table as HDF5: for programs that reckon with columns. A dataset for each column, the names in
 * their order in the attribute {@code columns}, the count in {@code rows}; a table without a row
 * has no dataset. Where nothing was written a number is not a number and a text is empty. What is
 * written lies in memory until its file is closed, every text as long as the longest of its column,
 * so a large table goes on in {@code NAME-2.h5}.
 */
final class HdfForm implements TableForm {
  private static final long MOST_BYTES = 100_000_000;

  private static final int NUMBER = 8;

  /** What a text is shorter than the longest takes no room in the file, because it is packed. */
  private static final int CHUNK = 256;

  private final Path folder;
  private final String name;
  private final List<Column> columns;
  private final long most;
  private final List<List<@Nullable Object>> rows = new ArrayList<>();
  private int[] widest;
  private int part = 1;

  HdfForm(Path folder, String name, List<Column> columns) {
    this(folder, name, columns, MOST_BYTES);
  }

  HdfForm(Path folder, String name, List<Column> columns, long most) {
    this.widest = new int[columns.size()];
    this.most = most;
    this.folder = folder;
    this.name = name;
    this.columns = columns;
  }

  @Override
  public void row(List<@Nullable Object> cells) {
    int[] wide = new int[widest.length];
    long together = 0;
    for (int i = 0; i < wide.length; i++) {
      wide[i] = Math.max(widest[i], bytes(cells.get(i)));
      together += wide[i];
    }
    if (!rows.isEmpty() && together * (rows.size() + 1) > most) {
      write();
      rows.clear();
      widest = new int[widest.length];
      part++;
      row(cells);
      return;
    }
    widest = wide;
    rows.add(cells);
  }

  @Override
  public void close() {
    write();
  }

  private static int bytes(@Nullable Object cell) {
    return cell instanceof String text ? text.getBytes(UTF_8).length : NUMBER;
  }

  private void write() {
    Path path = folder.resolve(name + (part == 1 ? "" : "-" + part) + ".h5");
    try (WritableHdfFile file = HdfFile.write(path)) {
      file.putAttribute("columns", columns.stream().map(Column::name).toArray(String[]::new));
      file.putAttribute("rows", (long) rows.size());
      if (rows.isEmpty()) {
        return;
      }
      DatasetCreationOptions packed =
          DatasetCreationOptions.builder()
              .chunkDimensions(Math.min(CHUNK, rows.size()))
              .shuffle()
              .deflate(4)
              .build();
      for (int i = 0; i < columns.size(); i++) {
        file.putDataset(columns.get(i).name(), cells(i), packed);
      }
    }
  }

  private Object cells(int column) {
    var cells = rows.stream().map(row -> row.get(column));
    return switch (columns.get(column).kind()) {
      case WHOLE -> cells.mapToLong(HdfForm::whole).toArray();
      case REAL -> cells.mapToDouble(c -> c == null ? Double.NaN : (Double) c).toArray();
      case TEXT -> cells.map(c -> c == null ? "" : c.toString()).toArray(String[]::new);
    };
  }

  /** No whole number of the ledger may be missing. */
  private static long whole(@Nullable Object cell) {
    return cell == null ? 0 : (Long) cell;
  }
}
