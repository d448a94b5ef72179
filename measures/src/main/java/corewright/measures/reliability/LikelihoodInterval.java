package corewright.measures.reliability;

import corewright.measures.statistics.Interval;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * The values of one positive parameter that the data do not contradict: those whose likelihood, the
 * other parameter at its best, is within the stated distance of the highest.
 *
 * @see "Lawless, Statistical Models and Methods for Lifetime Data (2003), section 2.2 and 5.2"
 */
final class LikelihoodInterval {
  /** An end further away than this factor is not known. */
  private static final double FARTHEST = 1e9;

  private LikelihoodInterval() {}

  /**
   * @param best where the likelihood is highest
   * @param profile logarithm of the likelihood by the parameter
   */
  static Interval of(double best, DoubleUnaryOperator profile, double level) {
    Interval.requireLevel(level);
    double drop = new ChiSquaredDistribution(null, 1).inverseCumulativeProbability(level) / 2;
    double least = profile.applyAsDouble(best) - drop;
    return new Interval(
        end(best, profile, least, 1 / 1.5, 0),
        end(best, profile, least, 1.5, Double.POSITIVE_INFINITY),
        level);
  }

  private static double end(
      double best, DoubleUnaryOperator profile, double least, double stride, double unknown) {
    double inside = best;
    double outside = best * stride;
    while (profile.applyAsDouble(outside) > least) {
      inside = outside;
      outside *= stride;
      if (Math.abs(Math.log(outside / best)) > Math.log(FARTHEST)) {
        return unknown;
      }
    }
    double low = Math.min(Math.log(inside), Math.log(outside));
    double high = Math.max(Math.log(inside), Math.log(outside));
    return Math.exp(
        new BrentSolver(1e-12, 1e-12)
            .solve(200, log -> profile.applyAsDouble(Math.exp(log)) - least, low, high));
  }
}
