package corewright.bench.log.table;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;

/** Signals that each have their own time, as rows of one value, in the order of time. */
final class MergedRows implements Iterator<Row> {
  private final List<Iterator<Row>> signals;
  private final Row[] heads;

  MergedRows(List<Iterator<Row>> signals) {
    this.signals = List.copyOf(signals);
    this.heads = new Row[signals.size()];
    for (int i = 0; i < heads.length; i++) {
      pull(i);
    }
  }

  @Override
  public boolean hasNext() {
    return first() >= 0;
  }

  @Override
  public Row next() {
    int i = first();
    if (i < 0) {
      throw new NoSuchElementException();
    }
    Row row = heads[i];
    pull(i);
    return row;
  }

  @SuppressWarnings("NullAway") // an empty place means that the signal has ended
  private void pull(int i) {
    heads[i] = signals.get(i).hasNext() ? signals.get(i).next() : null;
  }

  private int first() {
    int first = -1;
    for (int i = 0; i < heads.length; i++) {
      if (heads[i] != null && (first < 0 || before(heads[i], heads[first]))) {
        first = i;
      }
    }
    return first;
  }

  private static boolean before(Row a, Row b) {
    return a.segment() != b.segment() ? a.segment() < b.segment() : a.t_s() < b.t_s();
  }
}
