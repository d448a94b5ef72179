package corewright.measures.reliability;

import corewright.measures.statistics.Interval;
import java.util.List;

/**
 * Weibull distribution of lifetimes by maximum likelihood, units still in service taken as
 * suspensions. Share that has failed by t: 1 − exp(−(t/scale)^shape).
 *
 * <p>The estimate of shape is biased upwards, by about 1.4/failures of itself where all have
 * failed. Units from several populations bend the line; split them first.
 *
 * @see "Lawless, Statistical Models and Methods for Lifetime Data (2003), chapter 5; NIST/SEMATECH
 *     e-Handbook 8.4.1.3"
 */
public final class WeibullFit {
  /** Through fewer failures no line is drawn. */
  public static final int LEAST_FAILURES = 5;

  private final WeibullLikelihood likelihood;
  private final double shape;
  private final double scale;

  private WeibullFit(WeibullLikelihood likelihood, double shape, double scale) {
    this.likelihood = likelihood;
    this.shape = shape;
    this.scale = scale;
  }

  /**
   * @throws IllegalArgumentException if fewer than {@link #LEAST_FAILURES} units failed, or they
   *     failed so much at one moment that no shape can be given
   */
  public static WeibullFit of(List<Lifetime> lifetimes) {
    long failures = lifetimes.stream().filter(Lifetime::failed).mapToLong(Lifetime::count).sum();
    if (failures < LEAST_FAILURES) {
      throw new IllegalArgumentException(
          "a Weibull line needs at least "
              + LEAST_FAILURES
              + " failures, there are "
              + failures
              + "; count them with their interval instead");
    }
    WeibullLikelihood likelihood = new WeibullLikelihood(lifetimes);
    double shape = likelihood.bestShape();
    return new WeibullFit(likelihood, shape, likelihood.bestScale(shape));
  }

  /** Below 1: early failures; about 1: chance; above 1: wear. */
  public double shape() {
    return shape;
  }

  /** Time by which 63.2 % have failed. */
  public double scale() {
    return scale;
  }

  public long failures() {
    return likelihood.count(true);
  }

  public long suspensions() {
    return likelihood.count(false);
  }

  /** At the solution; densities per unit of time. */
  public double logLikelihood() {
    return likelihood.log(shape, scale);
  }

  public Interval shapeInterval(double level) {
    return LikelihoodInterval.of(shape, s -> likelihood.log(s, likelihood.bestScale(s)), level);
  }

  public Interval scaleInterval(double level) {
    return through(scale, 0, level);
  }

  /**
   * Time by which a share has failed.
   *
   * @param share for example 0.1 for the B10 life
   */
  public double quantile(double share) {
    Interval.requireLevel(share);
    return scale * Math.exp(logOfCumulatedHazard(share) / shape);
  }

  /** Interval of {@link #quantile}; an end that the data leave open is 0 or ∞. */
  public Interval quantileInterval(double share, double level) {
    return through(quantile(share), logOfCumulatedHazard(share), level);
  }

  /** Share that has failed by a time. */
  public double failedBy(double time) {
    return -Math.expm1(-Math.pow(time / scale, shape));
  }

  private Interval through(double time, double w, double level) {
    return LikelihoodInterval.of(
        time,
        t -> {
          double s = likelihood.bestShapeThrough(t, w);
          return likelihood.log(s, t * Math.exp(-w / s));
        },
        level);
  }

  /** ln of −ln(1 − share). */
  private static double logOfCumulatedHazard(double share) {
    return Math.log(-Math.log1p(-share));
  }
}
