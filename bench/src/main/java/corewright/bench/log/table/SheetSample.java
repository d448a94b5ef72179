package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.List;

/**
 * The rows under one header, thinned: the first ones as they follow each other, then every n-th, so
 * that a file of any size leaves a bounded number of them.
 */
final class SheetSample {
  private static final int HEAD_ROWS = 1500;
  private static final int THINNED_ROWS = 2500;

  private final Head head;
  private final Dialect dialect;
  private final List<List<String>> rows = new ArrayList<>();
  private final List<List<String>> thinned = new ArrayList<>();
  private long seen;
  private long stride = 1;

  SheetSample(Head head, Dialect dialect) {
    this.head = head;
    this.dialect = dialect;
  }

  /** Whether the next row would be kept; counts it. */
  boolean wants() {
    long number = seen++;
    return number < HEAD_ROWS || (number - HEAD_ROWS) % stride == 0;
  }

  /** Keeps the row that {@link #wants} asked for. */
  void keep(List<String> row) {
    if (rows.size() < HEAD_ROWS) {
      rows.add(row);
      return;
    }
    thinned.add(row);
    if (thinned.size() > THINNED_ROWS) {
      List<List<String>> half = new ArrayList<>();
      for (int i = 0; i < thinned.size(); i += 2) {
        half.add(thinned.get(i));
      }
      thinned.clear();
      thinned.addAll(half);
      stride *= 2;
    }
  }

  Head head() {
    return head;
  }

  Dialect dialect() {
    return dialect;
  }

  /** Rows that follow each other in the file. */
  List<List<String>> headRows() {
    return rows;
  }

  /** All rows that were kept, in order. */
  List<List<String>> rows() {
    List<List<String>> all = new ArrayList<>(rows);
    all.addAll(thinned);
    return all;
  }

  int columns() {
    return Math.max(head.names().size(), dialect.columns());
  }

  Label label(int column) {
    String name = column < head.names().size() ? head.names().get(column) : "";
    String unit = column < head.units().size() ? head.units().get(column) : "";
    return Label.of(name, unit);
  }

  /** What tells this header from others. */
  String key() {
    return key(head.names());
  }

  static String key(List<String> names) {
    int last = names.size();
    while (last > 0 && names.get(last - 1).isEmpty()) {
      last--;
    }
    return Folded.of(String.join("\u0001", names.subList(0, last)));
  }
}
