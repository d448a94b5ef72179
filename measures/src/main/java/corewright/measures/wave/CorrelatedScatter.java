package corewright.measures.wave;

import corewright.measures.Waveform;

/**
 * Scatter of a stretch about its straight line, and how many independent samples it is worth.
 *
 * <p>The straight line is taken out first: a drift is a property of the hold and no scatter of its
 * mean. What then remains is averaged in blocks (at most {@value #MOST_BLOCKS}, so that long
 * stretches cost no more than reading them), and the variance of the mean is the blocks' variance
 * times 1 + 2Σρ, with the autocorrelation ρ summed over lags in pairs for as long as a pair is
 * positive beyond its own noise (Geyer's initial positive sequence). It is never taken below that
 * of independent samples: ripple faster than half the sample rate folds anywhere, to the mean too,
 * and cannot be told from noise.
 *
 * @param sd standard deviation about the line
 * @param effectiveCount independent samples that would have the same scatter of the mean, at most
 *     the number of samples
 * @see "JCGM 100:2008, 4.2.7 correlated observations; Geyer, Practical Markov chain Monte Carlo,
 *     Statistical Science 7 (1992) 473, section 3.3"
 */
public record CorrelatedScatter(double sd, double effectiveCount) {
  private static final int MOST_BLOCKS = 1024;

  /** Scatter of samples {@code [from, to)} about {@code trend}; at least two. */
  public static CorrelatedScatter of(Waveform wave, int from, int to, LinearTrend trend) {
    Stretch.require(wave, from, to, 2);
    int n = to - from;
    int size = Math.max(1, n / MOST_BLOCKS);
    double[] means = new double[n / size];
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double residual = wave.at(from + i) - trend.at(from + i);
      squares += residual * residual;
      int block = i / size;
      if (block < means.length) {
        means[block] += residual / size;
      }
    }
    int freedom = Math.max(1, n - 2);
    double sd = Math.sqrt(squares / freedom);
    if (sd == 0 || means.length < 8) {
      return new CorrelatedScatter(sd, n);
    }
    double varianceOfMean = varianceOfMean(means);
    double effective = varianceOfMean > 0 ? sd * sd / varianceOfMean : n;
    return new CorrelatedScatter(sd, Math.max(1, Math.min(n, effective)));
  }

  /** Standard uncertainty of the mean. */
  public double ofMean() {
    return sd / Math.sqrt(effectiveCount);
  }

  private static double varianceOfMean(double[] blocks) {
    int n = blocks.length;
    double mean = 0;
    for (double b : blocks) {
      mean += b / n;
    }
    double zero = covariance(blocks, mean, 0);
    if (zero == 0) {
      return 0;
    }
    double noise = 2 / Math.sqrt(n); // two standard deviations of a pair's sum would be 2√2/√n·½
    double sum = zero + 2 * covariance(blocks, mean, 1);
    for (int lag = 2; lag + 1 < n / 2; lag += 2) {
      double pair = covariance(blocks, mean, lag) + covariance(blocks, mean, lag + 1);
      if (pair < noise * zero) {
        break;
      }
      sum += 2 * pair;
    }
    return Math.max(0, sum) / n;
  }

  private static double covariance(double[] x, double mean, int lag) {
    double sum = 0;
    for (int i = 0; i + lag < x.length; i++) {
      sum += (x[i] - mean) * (x[i + lag] - mean);
    }
    return sum / x.length;
  }
}
