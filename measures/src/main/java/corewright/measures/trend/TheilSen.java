package corewright.measures.trend;

import corewright.measures.statistics.Interval;
import java.util.Arrays;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * A slope that outliers do not pull: the median of the slopes of all pairs of points. Up to 29 % of
 * the points may be anywhere. Its interval counts pairs and supposes no distribution, but
 * independent points: average a record in blocks longer than its correlation first.
 *
 * @param slope median of all pairs, rise per unit of x
 * @param intercept median of y less slope times median of x
 * @param interval of the slope
 * @see "Sen, J. Am. Stat. Assoc. 63 (1968) 1379"
 */
public record TheilSen(double slope, double intercept, Interval interval) {
  /** Twelve million pairs; beyond, a block mean costs nothing that matters. */
  public static final int MOST_POINTS = 5000;

  /**
   * @param level of confidence of the interval, for example 0.95
   * @throws IllegalArgumentException if there are fewer than three points or more than {@link
   *     #MOST_POINTS}, or all have one x
   */
  public static TheilSen of(double[] x, double[] y, double level) {
    Interval.requireLevel(level);
    if (x.length != y.length || x.length < 3 || x.length > MOST_POINTS) {
      throw new IllegalArgumentException(
          "a slope of pairs takes 3 to "
              + MOST_POINTS
              + " points, not "
              + x.length
              + "; average a longer record in blocks");
    }
    double[] slopes = slopes(x, y);
    if (slopes.length == 0) {
      throw new IllegalArgumentException("all points have one x: there is no slope");
    }
    double slope = median(slopes);
    double spread = deviationOfKendallsSum(x, y);
    double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + level) / 2);
    int pairs = slopes.length;
    int low = (int) Math.max(0, Math.rint((pairs - z * spread) / 2) - 1);
    int high = (int) Math.min(pairs - 1, Math.rint((pairs + z * spread) / 2));
    return new TheilSen(
        slope,
        median(sorted(y)) - slope * median(sorted(x)),
        new Interval(slopes[low], slopes[high], level));
  }

  private static double[] slopes(double[] x, double[] y) {
    double[] slopes = new double[x.length * (x.length - 1) / 2];
    int n = 0;
    for (int i = 0; i < x.length; i++) {
      for (int j = i + 1; j < x.length; j++) {
        if (x[j] != x[i]) {
          slopes[n++] = (y[j] - y[i]) / (x[j] - x[i]);
        }
      }
    }
    return sorted(Arrays.copyOf(slopes, n));
  }

  /** Standard deviation of the number of rising less falling pairs if nothing rose, with ties. */
  private static double deviationOfKendallsSum(double[] x, double[] y) {
    double n = x.length;
    double variance = n * (n - 1) * (2 * n + 5) - ofTies(x) - ofTies(y);
    return Math.sqrt(Math.max(0, variance / 18));
  }

  private static double ofTies(double[] values) {
    TreeMap<Double, Integer> counts = new TreeMap<>();
    for (double value : values) {
      counts.merge(value, 1, Integer::sum);
    }
    double sum = 0;
    for (double k : counts.values()) {
      sum += k * (k - 1) * (2 * k + 5);
    }
    return sum;
  }

  private static double[] sorted(double[] values) {
    double[] copy = values.clone();
    Arrays.sort(copy);
    return copy;
  }

  private static double median(double[] sorted) {
    int n = sorted.length;
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
  }
}
