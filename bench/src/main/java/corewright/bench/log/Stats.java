package corewright.bench.log;

import java.util.Arrays;

/** Statistics of few and coarse samples. */
final class Stats {
  private Stats() {}

  /** The middle value; the mean of the middle two of an even number; NaN of none. */
  static double median(double[] sorted) {
    int n = sorted.length;
    if (n == 0) {
      return Double.NaN;
    }
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
  }

  /**
   * A quantile between order statistics, with the plotting position (i − 1/2)/n.
   *
   * @see "Hyndman and Fan (1996), Sample quantiles in statistical packages, definition 5"
   */
  static double quantile(double[] sorted, double share) {
    int n = sorted.length;
    double at = share * n - 0.5;
    if (at <= 0) {
      return sorted[0];
    }
    if (at >= n - 1) {
      return sorted[n - 1];
    }
    int below = (int) at;
    return sorted[below] + (at - below) * (sorted[below + 1] - sorted[below]);
  }

  /** The median of the lowest quarter, of at least two samples. */
  static double lowestQuarter(double[] sorted) {
    int n = Math.min(sorted.length, Math.max(2, (sorted.length + 3) / 4));
    return median(Arrays.copyOf(sorted, n));
  }

  /**
   * The lowest level that is no accident: the tenth percentile of five samples or more, the second
   * lowest of fewer, the only one of one.
   */
  static double robustLowest(double[] sorted) {
    return switch (sorted.length) {
      case 0 -> Double.NaN;
      case 1 -> sorted[0];
      case 2, 3, 4 -> sorted[1];
      default -> quantile(sorted, 0.1);
    };
  }

  /**
   * Scatter from sample to sample, a slow fall taken out: the mean of the differences between
   * neighbours about their median, as one standard deviation of a normal scatter.
   *
   * @see "the mean absolute difference of two normal values is 2σ/√π"
   */
  static double scatter(Series s) {
    int n = s.size() - 1;
    if (n < 2) {
      return 0;
    }
    double[] steps = new double[n];
    for (int i = 0; i < n; i++) {
      steps[i] = s.value(i + 1) - s.value(i);
    }
    double[] sorted = steps.clone();
    Arrays.sort(sorted);
    double middle = median(sorted);
    double sum = 0;
    for (double step : steps) {
      sum += Math.abs(step - middle);
    }
    return sum / n * Math.sqrt(Math.PI) / 2;
  }
}
