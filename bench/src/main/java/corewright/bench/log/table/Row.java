package corewright.bench.log.table;

import java.util.Arrays;

/**
 * What was logged at one time: one value a kept channel, NaN where there is none.
 *
 * <p>A segment is a stretch whose times belong together; at a pause or a step of the clock a new
 * one begins, and nothing is measured across.
 */
public final class Row {
  private final int segment;
  private final long line;
  private final double t_s;
  private final double[] values;

  Row(int segment, long line, double t_s, double[] values) {
    this.segment = segment;
    this.line = line;
    this.t_s = t_s;
    this.values = values;
  }

  public int segment() {
    return segment;
  }

  /** Line of the file, counted from 1. */
  public long line() {
    return line;
  }

  /** Seconds on the log's own clock. */
  public double t_s() {
    return t_s;
  }

  /** The value of one channel, in its unit; NaN where there is none. */
  public double value(int channel) {
    return values[channel];
  }

  Row at(int newSegment, double newT_s) {
    return new Row(newSegment, line, newT_s, values);
  }

  boolean sameValues(Row other) {
    return Arrays.equals(values, other.values);
  }

  double[] copy() {
    return values.clone();
  }
}
