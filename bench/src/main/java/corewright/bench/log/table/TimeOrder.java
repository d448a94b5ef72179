package corewright.bench.log.table;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * Rows in the order of time: stamps that start again at midnight go on, a few misplaced rows are
 * put where they belong, and where the clock was set back a new segment begins.
 */
final class TimeOrder implements Iterator<Row> {
  /** How many rows are held back, so that a misplaced one still finds its place. */
  private static final int HELD = 256;

  /** So many rows in a row before the latest time: the clock was set back. */
  private static final int STEP_ROWS = 5;

  /** A header after a longer step than this begins a new recording, s. */
  private static final double PAUSE_S = 2;

  private final Iterator<Row> in;
  private final double wrap_s;
  private final Dropped dropped;
  private final List<Row> held = new ArrayList<>();
  private final List<Row> late = new ArrayList<>();
  private final Deque<Row> out = new ArrayDeque<>();
  private int givenSegment = -1;
  private int segment = -1;
  private double offset_s;
  private double lastStamp_s = Double.NaN;
  private double latest_s = Double.NEGATIVE_INFINITY;
  private double given_s = Double.NEGATIVE_INFINITY;

  TimeOrder(Iterator<Row> in, double wrap_s, Dropped dropped) {
    this.in = in;
    this.wrap_s = wrap_s;
    this.dropped = dropped;
  }

  @Override
  public boolean hasNext() {
    while (out.isEmpty() && in.hasNext()) {
      take(in.next());
    }
    if (out.isEmpty()) {
      flush();
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

  private void take(Row row) {
    double stamp_s = row.t_s();
    if (row.segment() != givenSegment) {
      if (!goesOn(stamp_s)) {
        begin();
      }
      givenSegment = row.segment();
    }
    if (wrap_s > 0 && stamp_s < lastStamp_s - wrap_s / 2) {
      offset_s += wrap_s;
    } else if (wrap_s > 0 && stamp_s > lastStamp_s + wrap_s / 2 && offset_s > 0) {
      insertLate(row.at(segment, stamp_s + offset_s - wrap_s));
      return;
    }
    lastStamp_s = stamp_s;
    Row placed = row.at(segment, stamp_s + offset_s);
    if (placed.t_s() >= latest_s) {
      late.forEach(this::insertLate);
      late.clear();
      latest_s = placed.t_s();
      hold(placed);
      return;
    }
    late.add(placed);
    if (late.size() == STEP_ROWS && rising(late)) {
      stepBack();
    } else if (late.size() > HELD) {
      late.forEach(this::insertLate);
      late.clear();
    }
  }

  /** A header alone is no pause: some tools write one on every page. */
  private boolean goesOn(double stamp_s) {
    double t_s = stamp_s + offset_s + (stamp_s < lastStamp_s - wrap_s / 2 ? wrap_s : 0);
    return segment >= 0 && late.isEmpty() && t_s >= latest_s && t_s - latest_s <= PAUSE_S;
  }

  private static boolean rising(List<Row> rows) {
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).t_s() < rows.get(i - 1).t_s()) {
        return false;
      }
    }
    return true;
  }

  private void stepBack() {
    List<Row> first = List.copyOf(late);
    late.clear();
    double keptOffset_s = offset_s;
    double keptStamp_s = lastStamp_s;
    begin();
    dropped.clockStep();
    offset_s = keptOffset_s;
    lastStamp_s = keptStamp_s;
    for (Row row : first) {
      latest_s = row.t_s();
      hold(row.at(segment, row.t_s()));
    }
  }

  /** Ends a segment; rows that came late and never caught up belong to no time: they are left. */
  private void begin() {
    flush();
    segment++;
    offset_s = 0;
    lastStamp_s = Double.NaN;
    latest_s = Double.NEGATIVE_INFINITY;
    given_s = Double.NEGATIVE_INFINITY;
  }

  private void flush() {
    late.forEach(row -> dropped.other());
    late.clear();
    out.addAll(held);
    held.clear();
  }

  private void hold(Row row) {
    held.add(row);
    if (held.size() > HELD) {
      Row first = held.remove(0);
      given_s = first.t_s();
      out.add(first);
    }
  }

  private void insertLate(Row row) {
    dropped.misplacedRow();
    if (row.t_s() < given_s) {
      return;
    }
    int at = held.size();
    while (at > 0 && held.get(at - 1).t_s() > row.t_s()) {
      at--;
    }
    held.add(at, row);
  }
}
