package corewright.measures.trend;

import corewright.measures.statistics.Curve;
import corewright.measures.statistics.NonlinearFit;

/**
 * The exponential way from one level to another: y = end + (start − end)·exp(−t/τ), t counted from
 * the first point. A capacitor that is discharged, a unit that warms up.
 *
 * <p>Uncertainties are those of independent scatter; where it is correlated, average in blocks
 * first. A record shorter than τ hardly tells end from τ: both uncertainties then say so.
 *
 * @param start level at the first point
 * @param end level long after
 * @param tau_s time constant, s, above 0
 * @param uStart standard uncertainty of {@code start}
 * @param uEnd of {@code end}; 0 where it was given
 * @param uTau_s of {@code tau_s}
 * @param residualSd scatter about the curve
 */
public record Relaxation(
    double start,
    double end,
    double tau_s,
    double uStart,
    double uEnd,
    double uTau_s,
    double residualSd) {

  /** All three from the record. */
  public static Relaxation of(double[] t_s, double[] y) {
    UnitScale scale = UnitScale.of(t_s, y);
    double[] guess = {scale.last(), scale.first() - scale.last(), Math.log(0.3)};
    NonlinearFit fit = NonlinearFit.of(new ToAnyEnd(), scale.times(), scale.values(), guess);
    double end = fit.parameter(0);
    double uStart =
        Math.sqrt(fit.covariance(0, 0) + fit.covariance(1, 1) + 2 * fit.covariance(0, 1));
    return new Relaxation(
        scale.value(end + fit.parameter(1)),
        scale.value(end),
        scale.span_s() * Math.exp(fit.parameter(2)),
        scale.range() * uStart,
        scale.range() * fit.u(0),
        scale.span_s() * Math.exp(fit.parameter(2)) * fit.u(2),
        scale.range() * fit.residualSd());
  }

  /**
   * To a level that is known, as 0 V for a capacitor across a resistor.
   *
   * @param end without uncertainty
   */
  public static Relaxation towards(double end, double[] t_s, double[] y) {
    UnitScale scale = UnitScale.of(t_s, y);
    double to = scale.scaled(end);
    double ratio = (scale.last() - to) / (scale.first() - to);
    double rate = ratio > 0 && ratio < 1 ? -Math.log(ratio) : 1;
    NonlinearFit fit =
        NonlinearFit.of(
            new ToKnownEnd(to), scale.times(), scale.values(), scale.first() - to, -Math.log(rate));
    return new Relaxation(
        scale.value(to + fit.parameter(0)),
        end,
        scale.span_s() * Math.exp(fit.parameter(1)),
        scale.range() * fit.u(0),
        0,
        scale.span_s() * Math.exp(fit.parameter(1)) * fit.u(1),
        scale.range() * fit.residualSd());
  }

  /**
   * Value of the curve.
   *
   * @param since_s time since the first point
   */
  public double at(double since_s) {
    return end + (start - end) * Math.exp(-since_s / tau_s);
  }

  /** Parameters: end, distance at 0, ln τ; so τ stays above 0 on every way the fit may take. */
  private record ToAnyEnd() implements Curve {
    @Override
    public double at(double t, double[] p) {
      return p[0] + p[1] * Math.exp(-t * Math.exp(-p[2]));
    }

    @Override
    public double[] gradient(double t, double[] p) {
      double x = t * Math.exp(-p[2]);
      return new double[] {1, Math.exp(-x), p[1] * x * Math.exp(-x)};
    }
  }

  private record ToKnownEnd(double end) implements Curve {
    @Override
    public double at(double t, double[] p) {
      return end + p[0] * Math.exp(-t * Math.exp(-p[1]));
    }

    @Override
    public double[] gradient(double t, double[] p) {
      double x = t * Math.exp(-p[1]);
      return new double[] {Math.exp(-x), p[0] * x * Math.exp(-x)};
    }
  }
}
