package corewright.measures.statistics;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How many of how many, and what that says about the next ones.
 *
 * @param hits how many, 0 to {@code trials}
 * @param trials of how many, at least 1
 */
public record Proportion(long hits, long trials) {
  private static final double INVERSE_ACCURACY = 1e-15;

  public Proportion {
    if (trials < 1 || hits < 0 || hits > trials) {
      throw new IllegalArgumentException(hits + " of " + trials + " is no proportion");
    }
  }

  public double value() {
    return (double) hits / trials;
  }

  /**
   * Wilson's score interval, without continuity correction. Covers the stated level on average and
   * can fall short of it by some percent for a given proportion; what a yield is drawn with.
   *
   * @param level for example 0.95
   * @see "Wilson, J. Am. Stat. Assoc. 22 (1927) 209; Newcombe, Statist. Med. 17 (1998) 857, method
   *     3"
   */
  public Interval wilson(double level) {
    Interval.requireLevel(level);
    double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + level) / 2);
    double p = value();
    double n = trials;
    double spread = 1 + z * z / n;
    double centre = (p + z * z / (2 * n)) / spread;
    double half = z / spread * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n));
    // The ends are exactly 0 and 1 there; rounding would leave −0 or a trace beyond.
    double low = hits == 0 ? 0 : Math.max(0, centre - half);
    double high = hits == trials ? 1 : Math.min(1, centre + half);
    return new Interval(low, high, level);
  }

  /**
   * Exact interval of Clopper and Pearson: never covers less than the level, mostly more. What a
   * claim that must hold is stated with.
   *
   * @see "Clopper and Pearson, Biometrika 26 (1934) 404"
   */
  public Interval clopperPearson(double level) {
    Interval.requireLevel(level);
    double tail = (1 - level) / 2;
    double low = hits == 0 ? 0 : quantile(hits, trials - hits + 1, tail);
    double high = hits == trials ? 1 : quantile(hits + 1, trials - hits, 1 - tail);
    return new Interval(low, high, level);
  }

  private static double quantile(long a, long b, double p) {
    return new BetaDistribution(null, (double) a, (double) b, INVERSE_ACCURACY)
        .inverseCumulativeProbability(p);
  }

  /**
   * Fewest trials without a failure that show a reliability.
   *
   * @param reliability least share that is good, for example 0.9
   * @param level confidence, for example 0.95: 29 units
   */
  public static long withoutFailure(double reliability, double level) {
    Interval.requireLevel(reliability);
    Interval.requireLevel(level);
    return (long) Math.ceil(Math.log(1 - level) / Math.log(reliability));
  }
}
