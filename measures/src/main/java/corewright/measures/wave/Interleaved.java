package corewright.measures.wave;

import java.util.function.IntToDoubleFunction;

/**
 * What the grid of the samples decides about a mean: every second sample, and every third, would
 * have given other means. Products of ripple harmonics that fold onto the mean do so still more at
 * half and a third of the sample rate, and nothing else shows them. Scaled so that white noise has
 * its own variance of the mean.
 *
 * @param varianceOfMean with three degrees of freedom
 */
record Interleaved(double varianceOfMean) {

  static Interleaved of(IntToDoubleFunction series, int count) {
    double[] halves = new double[2];
    double[] thirds = new double[3];
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double x = series.applyAsDouble(i);
      halves[i % 2] += x;
      thirds[i % 3] += x;
      sum += x;
    }
    return new Interleaved((apart(halves, sum, count) + apart(thirds, sum, count)) / 3);
  }

  /** Mean square distance of the parts' means from that of all. */
  private static double apart(double[] sums, double sum, int count) {
    double squares = 0;
    for (int k = 0; k < sums.length; k++) {
      int own = (count - k + sums.length - 1) / sums.length;
      double away = sums[k] / own - sum / count;
      squares += away * away / sums.length;
    }
    return squares;
  }
}
