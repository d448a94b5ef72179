package corewright.measures.trend;

/** A record brought to 0 … 1 in time and in value, so that a fit meets any unit alike. */
final class UnitScale {
  private final double[] times;
  private final double[] values;
  private final double span_s;
  private final double lowest;
  private final double range;

  private UnitScale(double[] times, double[] values, double span_s, double lowest, double range) {
    this.times = times;
    this.values = values;
    this.span_s = span_s;
    this.lowest = lowest;
    this.range = range;
  }

  /**
   * @throws IllegalArgumentException if there are fewer than four points, or the record does not
   *     move
   */
  static UnitScale of(double[] t_s, double[] y) {
    if (t_s.length != y.length || t_s.length < 4) {
      throw new IllegalArgumentException(
          "a time constant needs at least 4 points: " + t_s.length + " times, " + y.length);
    }
    double span = t_s[t_s.length - 1] - t_s[0];
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (double value : y) {
      lowest = Math.min(lowest, value);
      highest = Math.max(highest, value);
    }
    if (!(span > 0) || !(highest > lowest)) {
      throw new IllegalArgumentException(
          "a time constant needs a level that moves in time: "
              + span
              + " s, from "
              + lowest
              + " to "
              + highest);
    }
    double[] times = new double[y.length];
    double[] values = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      times[i] = (t_s[i] - t_s[0]) / span;
      values[i] = (y[i] - lowest) / (highest - lowest);
    }
    return new UnitScale(times, values, span, lowest, highest - lowest);
  }

  double[] times() {
    return times;
  }

  double[] values() {
    return values;
  }

  double first() {
    return values[0];
  }

  double last() {
    return values[values.length - 1];
  }

  /** Length of the record, s: what 1 in time is. */
  double span_s() {
    return span_s;
  }

  /** What 1 in value is. */
  double range() {
    return range;
  }

  double scaled(double value) {
    return (value - lowest) / range;
  }

  double value(double scaled) {
    return lowest + range * scaled;
  }
}
