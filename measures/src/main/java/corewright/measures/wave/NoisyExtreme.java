package corewright.measures.wave;

import java.util.function.IntToDoubleFunction;
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
  private static final int TURNS = 3;

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

  /** How far beyond the extreme of so many samples lie those that noise could have made it. */
  static double reach(double sd, double count, double correlated) {
    return (bias(count, correlated) + 1) * sd;
  }

  /** How many deviations the extreme of so many is expected to lie beyond what they share. */
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
   * Samples that noise could have made the extreme: fewer at the bottom of a dip than in a level.
   * They lie within one deviation of what there is without noise, and the extreme itself lies
   * beyond that by as much as the extreme of so many is expected to: found in three turns.
   *
   * @param x only its differences count
   * @param sd standard deviation of the noise, in the unit of x
   * @param correlated how many neighbours are worth one for the mean, at least 1
   * @param sign 1 for the lowest, −1 for the highest
   */
  public static int sharing(
      IntToDoubleFunction x, int count, double sd, double correlated, int sign) {
    double extreme = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      extreme = Math.min(extreme, sign * x.applyAsDouble(i));
    }
    int sharing = count;
    for (int turn = 0; turn < TURNS; turn++) {
      double bound = extreme + reach(sd, sharing, correlated);
      int within = 0;
      for (int i = 0; i < count; i++) {
        within += sign * x.applyAsDouble(i) <= bound ? 1 : 0;
      }
      sharing = Math.max(1, within);
    }
    return sharing;
  }
}
