package corewright.measures.wave;

import java.util.function.IntToDoubleFunction;

/** Means of equal blocks of a series, and what their autocorrelation says of the mean of it all. */
final class BlockMeans {
  private final double[] means;
  private final double mean;
  private final double variance;

  /** Sum of all autocovariances, lag 0 once and the others twice, as far as they count. */
  private final double sum;

  private final boolean periodic;

  private BlockMeans(double[] means) {
    this.means = means;
    double total = 0;
    for (double m : means) {
      total += m;
    }
    mean = total / means.length;
    variance = covariance(0);
    // The sum of a pair of autocorrelations of white noise has the standard deviation √2/√n.
    double noise = 2 / Math.sqrt(means.length) * variance;
    double counted = variance + 2 * covariance(1);
    double pair = 0;
    for (int lag = 2; lag + 1 < means.length / 2; lag += 2) {
      pair = covariance(lag) + covariance(lag + 1);
      if (pair < noise) {
        break;
      }
      counted += 2 * pair;
    }
    sum = counted;
    periodic = variance > 0 && Math.min(pair, 2 * covariance(1)) < -1.5 * noise;
  }

  static BlockMeans of(IntToDoubleFunction series, int count, int most) {
    int size = Math.max(1, count / most);
    double[] means = new double[count / size];
    for (int block = 0; block < means.length; block++) {
      double total = 0;
      for (int i = block * size; i < (block + 1) * size; i++) {
        total += series.applyAsDouble(i);
      }
      means[block] = total / size;
    }
    return new BlockMeans(means);
  }

  /** Whether neighbours are correlated negatively beyond what noise brings about. */
  boolean isPeriodic() {
    return periodic;
  }

  double varianceOfMean() {
    return Math.max(0, sum) / means.length;
  }

  private double covariance(int lag) {
    double total = 0;
    for (int i = 0; i + lag < means.length; i++) {
      total += (means[i] - mean) * (means[i + lag] - mean);
    }
    return total / means.length;
  }
}
