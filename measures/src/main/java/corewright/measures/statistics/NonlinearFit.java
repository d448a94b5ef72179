package corewright.measures.statistics;

import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Least squares for a curve that is not linear in its parameters, by Levenberg and Marquardt.
 * Uncertainties come from the linear model at the solution: good where the curve is nearly straight
 * over an uncertainty, too small where it is not.
 *
 * @see "Moré, The Levenberg-Marquardt algorithm: implementation and theory (1978)"
 */
public final class NonlinearFit {
  private static final int MOST_EVALUATIONS = 20_000;
  private static final int POLISH = 100;

  /** Relative rise of the sum of squares that is rounding and no rise. */
  private static final double FLAT = 1e-10;

  private final double[] parameters;
  private final double squares;
  private final LinearFit slope; // residuals against the gradient, at the solution

  private NonlinearFit(double[] parameters, double squares, LinearFit slope) {
    this.parameters = parameters;
    this.squares = squares;
    this.slope = slope;
  }

  /**
   * @param start first guess, one number for each parameter
   * @throws IllegalArgumentException if there are not more points than parameters, or the fit does
   *     not settle
   */
  public static NonlinearFit of(Curve curve, double[] x, double[] y, double... start) {
    if (x.length != y.length || x.length <= start.length) {
      throw new IllegalArgumentException(
          "a fit needs more points than parameters: "
              + x.length
              + " x, "
              + y.length
              + " y, "
              + start.length
              + " parameters");
    }
    for (int i = 0; i < x.length; i++) {
      if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
        throw new IllegalArgumentException("point " + i + " is not finite: " + x[i] + ", " + y[i]);
      }
    }
    double[] p = descend(curve, x, y, start);
    LinearFit slope = linear(curve, x, y, p);
    // The optimiser stops where the sum of squares no longer moves; the minimum is flat there, and
    // Gauss-Newton steps go on to where the parameters no longer move.
    double squares = squares(curve, x, y, p);
    double last = Double.POSITIVE_INFINITY;
    for (int i = 0; i < POLISH; i++) {
      double[] next = p.clone();
      double size = 0;
      for (int k = 0; k < next.length; k++) {
        next[k] += slope.coefficient(k);
        size = Math.max(size, Math.abs(slope.coefficient(k) / next[k]));
      }
      double then = squares(curve, x, y, next);
      if (!(size < last) || !(then <= squares * (1 + FLAT))) {
        break;
      }
      p = next;
      squares = then;
      last = size;
      slope = linear(curve, x, y, p);
    }
    return new NonlinearFit(p, squares, slope);
  }

  private static double[] descend(Curve curve, double[] x, double[] y, double[] start) {
    try {
      Optimum optimum =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(1e-15)
              .withParameterRelativeTolerance(1e-15)
              .withOrthoTolerance(1e-15)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .target(y)
                      .model(p -> evaluate(curve, x, p))
                      .maxEvaluations(MOST_EVALUATIONS)
                      .maxIterations(MOST_EVALUATIONS)
                      .build());
      return optimum.getPoint().toArray();
    } catch (MathIllegalStateException e) {
      throw new IllegalArgumentException(
          "the fit did not settle (" + e.getMessage() + "); a nearer first guess may help", e);
    }
  }

  private static Pair<RealVector, RealMatrix> evaluate(Curve curve, double[] x, RealVector point) {
    double[] p = point.toArray();
    double[] values = new double[x.length];
    double[][] gradients = new double[x.length][];
    for (int i = 0; i < x.length; i++) {
      values[i] = curve.at(x[i], p);
      gradients[i] = curve.gradient(x[i], p);
    }
    return new Pair<>(
        new ArrayRealVector(values, false), new Array2DRowRealMatrix(gradients, false));
  }

  private static LinearFit linear(Curve curve, double[] x, double[] y, double[] p) {
    double[][] model = new double[x.length][];
    double[] residual = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      model[i] = curve.gradient(x[i], p);
      residual[i] = y[i] - curve.at(x[i], p);
    }
    return LinearFit.of(model, residual);
  }

  private static double squares(Curve curve, double[] x, double[] y, double[] p) {
    PreciseSum sum = new PreciseSum();
    for (int i = 0; i < x.length; i++) {
      double r = y[i] - curve.at(x[i], p);
      sum.addProduct(r, r);
    }
    return sum.value();
  }

  public double parameter(int i) {
    return parameters[i];
  }

  /** All parameters, for {@link Curve#at}. */
  public double[] parameters() {
    return parameters.clone();
  }

  /** Standard uncertainty of a parameter, from the scatter about the fit. */
  public double u(int i) {
    return Math.sqrt(covariance(i, i));
  }

  public double covariance(int i, int j) {
    return slope.covariance(i, j) / slope.sumOfSquares() * squares;
  }

  /** Points less parameters. */
  public int freedom() {
    return slope.freedom();
  }

  public double sumOfSquares() {
    return squares;
  }

  /** Standard deviation about the fit. */
  public double residualSd() {
    return Math.sqrt(squares / freedom());
  }
}
