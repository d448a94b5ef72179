package corewright.bench.log;

import corewright.bench.log.table.Column;
import corewright.bench.log.table.Role;
import corewright.bench.log.table.Row;
import java.util.ArrayList;
import java.util.List;

/**
 * The whole log for the picture, thinned evenly, for a log in which no crank is found. A log of any
 * length leaves a bounded number of dots.
 */
final class Overview {
  private static final int MOST_ROWS = 4000;

  private final List<Column> channels;
  private final List<Row> rows = new ArrayList<>();
  private long seen;
  private long stride = 1;

  Overview(List<Column> channels) {
    this.channels = List.copyOf(channels);
  }

  void take(Row row) {
    if (seen++ % stride != 0) {
      return;
    }
    rows.add(row);
    if (rows.size() > MOST_ROWS) {
      for (int i = 0; i < rows.size(); i++) {
        rows.remove(i); // every second one: the next takes its place
      }
      stride *= 2;
    }
  }

  /** Supplies, outputs and engine speed as dots. */
  List<Trace> traces() {
    return traces(channels, rows, Integer.MAX_VALUE);
  }

  /** The drawn channels of some rows, of each at most about this many dots. */
  static List<Trace> traces(List<Column> channels, List<Row> rows, int most) {
    List<Trace> traces = new ArrayList<>();
    for (int c = 0; c < channels.size(); c++) {
      Role role = channels.get(c).role();
      if (role == Role.SUPPLY || role == Role.OUTPUT || role == Role.SPEED) {
        Series s = Series.of(rows, c);
        int stride = Math.max(1, s.size() / most);
        List<Dot> dots = new ArrayList<>();
        for (int i = 0; i < s.size(); i += stride) {
          dots.add(new Dot(s.t_s(i), s.value(i)));
        }
        traces.add(new Trace(channels.get(c).title(), role, dots));
      }
    }
    return traces;
  }
}
