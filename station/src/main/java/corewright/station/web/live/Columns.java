package corewright.station.web.live;

import java.util.Arrays;

/**
 * The curves of one run for a screen: lowest and highest value of each lane in each column of time,
 * kept for the whole run. Never an average: what moved within a column is seen. Written by the
 * engine's thread under a short lock, read by everybody.
 */
final class Columns {
  /** In this order. */
  enum Lane {
    OUTPUT(0),
    INPUT(2),
    LOAD(4),
    CURRENT(6);

    private final int at;

    Lane(int at) {
      this.at = at;
    }
  }

  /** Lowest and highest of each lane. */
  static final int WIDTH = 2 * Lane.values().length;

  /** Stands where nothing was sampled. */
  static final int NOTHING = Integer.MIN_VALUE;

  private static final int AT_FIRST = 4096;

  private final int column_ms;
  private int[] values = new int[AT_FIRST * WIDTH];
  private int size;

  /**
   * @param column_ms how long one column is, ms
   */
  Columns(int column_ms) {
    this.column_ms = column_ms;
  }

  int column_ms() {
    return column_ms;
  }

  /** Time at the end of the last column, s since sampling began. */
  synchronized double at_s() {
    return size * column_ms / 1000.0;
  }

  synchronized int size() {
    return size;
  }

  /**
   * Adds columns; what lies between the last one and these was not sampled.
   *
   * @param at index of the first of them
   * @param more lowest and highest by lane, in thousandths of volts and amperes
   */
  synchronized void add(int at, int[] more, int count) {
    int end = at + count;
    if (end * WIDTH > values.length) {
      values = Arrays.copyOf(values, Math.max(end * WIDTH, values.length * 2));
    }
    if (at > size) {
      Arrays.fill(values, size * WIDTH, at * WIDTH, NOTHING);
    }
    System.arraycopy(more, 0, values, at * WIDTH, count * WIDTH);
    size = Math.max(size, end);
  }

  /** A copy of the columns from one index to before another; as many of them as there are. */
  synchronized int[] copy(int from, int to) {
    int first = Math.min(Math.max(0, from), size);
    return Arrays.copyOfRange(values, first * WIDTH, Math.max(first, Math.min(to, size)) * WIDTH);
  }

  /**
   * Lowest and highest of one lane over the last columns; {@link #NOTHING} twice if there is none.
   */
  int[] extremes(Lane lane, int columns) {
    int end = size();
    return extremes(copy(end - columns, end), lane);
  }

  /** The same within a copy. */
  static int[] extremes(int[] copied, Lane lane) {
    int low = Integer.MAX_VALUE;
    int high = NOTHING;
    for (int at = lane.at; at < copied.length; at += WIDTH) {
      if (copied[at] != NOTHING) {
        low = Math.min(low, copied[at]);
        high = Math.max(high, copied[at + 1]);
      }
    }
    return high == NOTHING ? new int[] {NOTHING, NOTHING} : new int[] {low, high};
  }

  /**
   * The same columns, so many joined into one: lowest of the lowest, highest of the highest.
   *
   * @param join how many; a last group may be smaller
   */
  static int[] joined(int[] columns, int join) {
    int count = columns.length / WIDTH;
    int groups = (count + join - 1) / join;
    int[] wide = new int[groups * WIDTH];
    for (int g = 0; g < groups; g++) {
      int[] part =
          Arrays.copyOfRange(columns, g * join * WIDTH, Math.min(count, (g + 1) * join) * WIDTH);
      for (Lane lane : Lane.values()) {
        System.arraycopy(extremes(part, lane), 0, wide, g * WIDTH + lane.at, 2);
      }
    }
    return wide;
  }
}
