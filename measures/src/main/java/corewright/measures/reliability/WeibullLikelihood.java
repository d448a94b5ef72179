package corewright.measures.reliability;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Likelihood of Weibull distributions given lifetimes, and its maxima along lines. */
final class WeibullLikelihood {
  private static final BrentSolver SOLVER = new BrentSolver(1e-14, 1e-14);
  private static final int MOST_STEPS = 500;
  private static final double SMALLEST_SHAPE = 1e-3;
  private static final double LARGEST_SHAPE = 1e4;

  private final List<Lifetime> lives;
  private final double longest;
  private final long failures;

  WeibullLikelihood(List<Lifetime> lives) {
    this.lives = List.copyOf(lives);
    this.longest = lives.stream().mapToDouble(Lifetime::time).max().orElseThrow();
    this.failures = count(true);
  }

  long count(boolean failed) {
    return lives.stream().filter(l -> l.failed() == failed).mapToLong(Lifetime::count).sum();
  }

  /** Logarithm of the likelihood, densities per unit of time. */
  double log(double shape, double scale) {
    double sum = 0;
    for (Lifetime life : lives) {
      double z = shape * Math.log(life.time() / scale);
      sum -= life.count() * Math.exp(z);
      if (life.failed()) {
        sum += life.count() * (z + Math.log(shape / life.time()));
      }
    }
    return sum;
  }

  /** Most likely shape of all. */
  double bestShape() {
    if (slope(LARGEST_SHAPE) <= 0 || slope(SMALLEST_SHAPE) >= 0) {
      throw new IllegalArgumentException(
          "the failures lie so close together that no shape can be given");
    }
    return SOLVER.solve(MOST_STEPS, this::slope, SMALLEST_SHAPE, LARGEST_SHAPE);
  }

  /** Most likely scale for a shape. */
  double bestScale(double shape) {
    double sum = 0;
    for (Lifetime life : lives) {
      sum += life.count() * Math.exp(shape * Math.log(life.time() / longest));
    }
    return longest * Math.pow(sum / failures, 1 / shape);
  }

  /**
   * Most likely shape of those under which a share has failed by a time. In the shape alone the
   * likelihood is then concave.
   *
   * @param w ln(−ln(1 − share))
   */
  double bestShapeThrough(double time, double w) {
    return SOLVER.solve(
        MOST_STEPS, shape -> slopeThrough(time, w, shape), SMALLEST_SHAPE, LARGEST_SHAPE);
  }

  private double slopeThrough(double time, double w, double shape) {
    double sum = failures / shape;
    for (Lifetime life : lives) {
      double log = Math.log(life.time() / time);
      // Capped where it has long decided the sign, so that it never becomes infinite.
      double hazard = Math.exp(Math.min(600, shape * log + w));
      sum += life.count() * log * ((life.failed() ? 1 : 0) - hazard);
    }
    return sum;
  }

  /** Derivative by shape with the best scale, per failure, sign changed: rises with shape. */
  private double slope(double shape) {
    double weights = 0;
    double weightedLogs = 0;
    double logs = 0;
    for (Lifetime life : lives) {
      double log = Math.log(life.time() / longest);
      double weight = life.count() * Math.exp(shape * log);
      weights += weight;
      weightedLogs += weight * log;
      logs += life.failed() ? life.count() * log : 0;
    }
    return weightedLogs / weights - 1 / shape - logs / failures;
  }
}
