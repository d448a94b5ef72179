package corewright.measures.wave;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How far noise moves an extreme. The lowest of m noisy samples that all lie on the same bottom is
 * too low by about a(m) standard deviations of the noise, and scatters by less than one. The
 * reading stays as it was read; what is known of its error is counted into U, as JCGM 100, F.2.4.5
 * allows where a correction is not applied: U = bias + 1.7 scatter holds 95 % to one side.
 */
public final class NoisyExtreme {
  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);
  private static final double NORMAL_95 = 1.96;

  private NoisyExtreme() {}

  /**
   * Half-width of a 95 % interval about the extreme of {@code count} equally likely samples.
   *
   * <p>Correlation makes fewer of them, but far less so than it does for a mean: the largest of a
   * dozen samples that are worth three for the mean is that of eight. An interpolation between 1
   * for one stiff value and the count for white noise, found good by simulation (the coverage
   * study).
   *
   * @param sd standard deviation of the noise
   * @param count samples that share the bottom, at least one
   * @param correlated how many neighbours are worth one for the mean, at least 1
   */
  public static double halfWidth(double sd, double count, double correlated) {
    double bias = bias(count, correlated);
    return sd * (bias + NORMAL_95 * scatter(bias));
  }

  /** The same to the other side, where the bias helps; never below 0. */
  public static double otherHalfWidth(double sd, double count, double correlated) {
    double bias = bias(count, correlated);
    return sd * Math.max(0, NORMAL_95 * scatter(bias) - bias);
  }

  private static double bias(double count, double correlated) {
    return expected(1 + Math.max(0, count - 1) * 3 / (2 + correlated));
  }

  /** Standard deviation of the largest of so many that its expectation is {@code bias}. */
  private static double scatter(double bias) {
    return 1 / (1 + bias / 2);
  }

  /**
   * Expected largest of {@code count} standard normal values.
   *
   * @see "Blom, Statistical Estimates and Transformed Beta-Variables (1958)"
   */
  static double expected(double count) {
    double n = Math.max(1, count);
    return NORMAL.inverseCumulativeProbability((n - 0.375) / (n + 0.25));
  }

  /**
   * Samples that share the bottom of a dip: those of the smoothed dip within one standard deviation
   * of its lowest point.
   *
   * @param sign 1 for a dip, −1 for a peak
   */
  public static int sharing(double[] x, int count, double sd, int sign) {
    int half = 2;
    double lowest = Double.POSITIVE_INFINITY;
    double[] smooth = new double[Math.max(0, count - 2 * half)];
    for (int i = 0; i < smooth.length; i++) {
      double sum = 0;
      for (int j = 0; j <= 2 * half; j++) {
        sum += x[i + j];
      }
      smooth[i] = sign * sum / (2 * half + 1);
      lowest = Math.min(lowest, smooth[i]);
    }
    int sharing = 0;
    for (double value : smooth) {
      sharing += value <= lowest + sd ? 1 : 0;
    }
    return Math.max(1, sharing);
  }
}
