package corewright.measures.meter;

import java.util.random.RandomGenerator;

/**
 * Peak to peak of ripple and noise as it is on the average of many windows of the same length: with
 * noise in it a range is a random number, and this is what a reading of it is a reading of.
 *
 * @param all of the samples
 * @param inBand of what a filter leaves of them
 */
record ExpectedRange(double all, double inBand) {
  private static final int WINDOWS = 100;

  /**
   * @param from sample that the window begins at
   */
  static ExpectedRange of(
      RippleLines lines,
      ColouredNoise noise,
      OnePole filter,
      int from,
      int length,
      RandomGenerator random) {
    double[] signal = new double[from + length];
    double[] left = new double[from + length];
    RippleLines through = lines.through(filter);
    for (int i = 0; i < signal.length; i++) {
      signal[i] = lines.at(i);
      left[i] = through.at(i);
    }
    double scale = Math.sqrt(filter.leftOf(noise.phi()) / filter.sampledLeftOf(noise.phi()));
    double all = 0;
    double inBand = 0;
    for (int window = 0; window < WINDOWS; window++) {
      double[] x = noise.drawn(signal.length, random);
      all += range(signal, x, 1, from) / WINDOWS;
      inBand += range(left, filter.of(x), scale, from) / WINDOWS;
    }
    return new ExpectedRange(all, inBand);
  }

  private static double range(double[] signal, double[] noise, double scale, int from) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = from; i < signal.length; i++) {
      double x = signal[i] + scale * noise[i];
      low = Math.min(low, x);
      high = Math.max(high, x);
    }
    return high - low;
  }
}
