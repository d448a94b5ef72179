package corewright.measures.conformity;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * What a decision rule does to a whole stream of units, whose true values and whose measurements
 * are both normally distributed.
 *
 * @param consumer probability that a unit is accepted and does not conform
 * @param producer probability that a unit is rejected and conforms
 * @see "JCGM 106:2012, 9.5, equations 18 and 19"
 */
public record GlobalRisk(double consumer, double producer) {
  private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(20);
  private static final int PANELS = 200;
  private static final double FAR = 9; // standard deviations; 1e-19 lies beyond

  /**
   * @param mean of the true values
   * @param spread standard deviation of the true values, above 0
   * @param u standard uncertainty of each measurement, above 0
   * @param conforms tolerance limits
   * @param accepts acceptance limits
   */
  public static GlobalRisk of(
      double mean, double spread, double u, Tolerance conforms, Tolerance accepts) {
    NormalDistribution units = new NormalDistribution(null, mean, spread);
    NormalDistribution error = new NormalDistribution(null, 0, u);
    UnivariateFunction accepted =
        value ->
            units.density(value)
                * (error.cumulativeProbability(accepts.high() - value)
                    - error.cumulativeProbability(accepts.low() - value));
    UnivariateFunction rejected =
        value ->
            units.density(value)
                * (error.cumulativeProbability(value - accepts.high())
                    + error.cumulativeProbability(accepts.low() - value));
    double lowest = mean - FAR * spread;
    double highest = mean + FAR * spread;
    double beyond =
        integral(accepted, lowest, conforms.low()) + integral(accepted, conforms.high(), highest);
    double within =
        integral(rejected, Math.max(lowest, conforms.low()), Math.min(highest, conforms.high()));
    return new GlobalRisk(beyond, within);
  }

  private static double integral(UnivariateFunction f, double from, double to) {
    if (!(from < to)) {
      return 0;
    }
    double sum = 0;
    double half = (to - from) / PANELS / 2;
    for (int i = 0; i < PANELS; i++) {
      double middle = from + (2 * i + 1) * half;
      sum += GAUSS.integrate(x -> f.value(middle + half * x)) * half;
    }
    return sum;
  }
}
