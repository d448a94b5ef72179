package corewright.measures.statistics;

import java.util.Arrays;

/**
 * What an instrument reads too much, as a straight line over the level, by weighted least squares:
 * error(x) = zero + slope·(x − at).
 *
 * <p>The stated uncertainties of the levels are the least that the line can have; where the values
 * scatter more about it than these allow, the scatter counts.
 *
 * @param at where the zero is taken
 * @param zero error at {@code at}
 * @param uZero its standard uncertainty
 * @param slope error by level
 * @param uSlope its standard uncertainty
 * @param correlation of zero and slope
 * @param scatter standard deviation of the weighted residuals: about 1 where the stated
 *     uncertainties describe what is seen
 * @see "JCGM 100:2008, H.3 (there with equal weights)"
 */
public record CalibrationLine(
    double at,
    double zero,
    double uZero,
    double slope,
    double uSlope,
    double correlation,
    double scatter) {

  /**
   * @param x levels, at least three
   * @param error at each, in the unit of the levels
   * @param u standard uncertainty of each error; all 0: from the scatter alone
   * @throws IllegalArgumentException if there are too few, all are at one level, or some of the
   *     uncertainties are 0 and others not
   */
  public static CalibrationLine of(double at, double[] x, double[] error, double[] u) {
    boolean stated = Arrays.stream(u).allMatch(v -> v > 0);
    if (!stated && Arrays.stream(u).anyMatch(v -> v != 0)) {
      throw new IllegalArgumentException("each level has an uncertainty above 0, or none has");
    }
    double[][] model = new double[x.length][];
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      double weight = stated ? 1 / u[i] : 1;
      model[i] = new double[] {weight, weight * (x[i] - at)};
      y[i] = weight * error[i];
    }
    LinearFit fit = LinearFit.of(model, y);
    double least = stated ? Math.max(1, fit.residualSd()) : fit.residualSd();
    return new CalibrationLine(
        at,
        fit.coefficient(0),
        least * fit.unscaled(0),
        fit.coefficient(1),
        least * fit.unscaled(1),
        fit.correlation(0, 1),
        fit.residualSd());
  }

  /** Error at a level. */
  public double errorAt(double x) {
    return zero + slope * (x - at);
  }

  /** Standard uncertainty of {@link #errorAt}. */
  public double uAt(double x) {
    double far = (x - at) * uSlope;
    return Math.sqrt(uZero * uZero + far * far + 2 * (x - at) * correlation * uZero * uSlope);
  }
}
