package corewright.measures.statistics;

/**
 * An interval with its level of confidence.
 *
 * @param low at most {@code high}; may be −∞
 * @param high may be ∞
 * @param level above 0, below 1, for example 0.95
 */
public record Interval(double low, double high, double level) {
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("low " + low + " is not at most high " + high);
    }
    requireLevel(level);
  }

  public boolean contains(double value) {
    return low <= value && value <= high;
  }

  /** Refuses a level of confidence that is not between 0 and 1, such as 95. */
  public static void requireLevel(double level) {
    if (!(level > 0) || !(level < 1)) {
      throw new IllegalArgumentException(
          "a level of confidence lies between 0 and 1, for example 0.95: " + level);
    }
  }
}
