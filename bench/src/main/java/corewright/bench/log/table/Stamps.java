package corewright.bench.log.table;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * Rows that share a stamp: repeated ones are left out, a group that fills different channels
 * becomes one row, and where the clock is coarse the rows are spread over its step.
 */
final class Stamps implements Iterator<Row> {
  private final Iterator<Row> in;
  private final boolean coarse;
  private final Dropped dropped;
  private final Deque<Row> out = new ArrayDeque<>();
  private Optional<Row> waiting = Optional.empty();
  private List<Row> before = List.of();
  private int lastCount;

  Stamps(Iterator<Row> in, boolean coarse, Dropped dropped) {
    this.in = in;
    this.coarse = coarse;
    this.dropped = dropped;
  }

  @Override
  public boolean hasNext() {
    while (out.isEmpty() && (in.hasNext() || waiting.isPresent() || !before.isEmpty())) {
      take(group());
    }
    return !out.isEmpty();
  }

  @Override
  public Row next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    return out.removeFirst();
  }

  /** The next rows with one stamp; empty at the end. */
  private List<Row> group() {
    List<Row> group = new ArrayList<>();
    waiting.ifPresent(group::add);
    waiting = Optional.empty();
    while (in.hasNext() && waiting.isEmpty()) {
      Row row = in.next();
      if (group.isEmpty() || same(group.get(0), row)) {
        group.add(row);
      } else {
        waiting = Optional.of(row);
      }
    }
    return group;
  }

  private static boolean same(Row a, Row b) {
    return a.segment() == b.segment() && a.t_s() == b.t_s();
  }

  private void take(List<Row> group) {
    if (!coarse) {
      if (!group.isEmpty()) {
        out.add(merged(group));
      }
      return;
    }
    boolean follows =
        !before.isEmpty() && !group.isEmpty() && before.get(0).segment() == group.get(0).segment();
    if (!before.isEmpty()) {
      spread(before, follows ? Optional.of(group) : Optional.empty());
    }
    lastCount = follows ? before.size() : 0;
    before = group;
  }

  /** Even spacing; the first and the last stamp of a segment may have been cut short. */
  private void spread(List<Row> rows, Optional<List<Row>> next) {
    int n = rows.size();
    double from = rows.get(0).t_s();
    double span = next.map(g -> Math.min(1, g.get(0).t_s() - from)).orElse(1.0);
    boolean first = lastCount == 0;
    int whole = next.isEmpty() ? lastCount : first ? next.get().size() : n;
    int slots = Math.max(n, whole);
    int skipped = first && next.isPresent() ? slots - n : 0;
    for (int i = 0; i < n; i++) {
      out.add(rows.get(i).at(rows.get(i).segment(), from + span * (i + skipped) / slots));
    }
  }

  private Row merged(List<Row> group) {
    List<Row> distinct = new ArrayList<>();
    for (Row row : group) {
      if (distinct.stream().anyMatch(d -> d.sameValues(row))) {
        dropped.duplicate();
      } else {
        distinct.add(row);
      }
    }
    Row head = distinct.get(0);
    if (distinct.size() == 1) {
      return head;
    }
    double[] values = head.copy();
    for (int c = 0; c < values.length; c++) {
      double sum = 0;
      int n = 0;
      for (Row row : distinct) {
        if (!Double.isNaN(row.value(c))) {
          sum += row.value(c);
          n++;
        }
      }
      values[c] = n == 0 ? Double.NaN : sum / n;
    }
    return new Row(head.segment(), head.line(), head.t_s(), values);
  }
}
