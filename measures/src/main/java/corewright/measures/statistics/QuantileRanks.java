package corewright.measures.statistics;

import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * Between which of the sorted values a quantile lies, whatever they are distributed like. Covers at
 * least the stated level; values that are equal make it cover more.
 *
 * @param low rank from 1; 0: there are too few values to say how low it may be
 * @param high rank; {@code n + 1}: too few to say how high
 * @see "Conover, Practical Nonparametric Statistics, 3rd ed. (1999), 3.2"
 */
public record QuantileRanks(int low, int high) {

  /**
   * @param n how many values, at least 1
   * @param share of the values below the quantile, for example 0.5: the median
   * @param level of confidence, for example 0.95
   */
  public static QuantileRanks of(int n, double share, double level) {
    Interval.requireLevel(share);
    Interval.requireLevel(level);
    BinomialDistribution below = new BinomialDistribution(null, n, share);
    double tail = (1 - level) / 2;
    return new QuantileRanks(
        below.inverseCumulativeProbability(tail), below.inverseCumulativeProbability(1 - tail) + 1);
  }
}
