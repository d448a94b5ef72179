package corewright.bench.log;

import corewright.bench.log.table.Row;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** The last rows before now: what came before a crank is known only once it has begun. */
final class Recent {
  private static final double KEPT_S = 9;
  private static final int MOST_ROWS = 40_000;

  private final Deque<Row> rows = new ArrayDeque<>();

  void add(Row row) {
    rows.addLast(row);
    while (rows.size() > MOST_ROWS || rows.getFirst().t_s() < row.t_s() - KEPT_S) {
      rows.removeFirst();
    }
  }

  void clear() {
    rows.clear();
  }

  List<Row> rows() {
    return new ArrayList<>(rows);
  }
}
