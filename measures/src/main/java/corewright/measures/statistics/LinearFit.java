package corewright.measures.statistics;

/**
 * Linear least squares: y ≈ Σ coefficient·column. Solved by orthogonal reflections and then refined
 * with residuals in twice the digits, so that the coefficients belong to the given numbers to
 * nearly the last digit; what an ill-conditioned model loses is then lost by rounding its columns.
 *
 * @see "Björck, Iterative refinement of linear least squares solutions, BIT 7 (1967) 257"
 */
public final class LinearFit {
  private static final int REFINEMENTS = 4;

  private final double[] coefficients;
  private final double[] residuals;
  private final double[][] unscaled; // (XᵀX)⁻¹
  private final double squares;
  private final double about;

  private LinearFit(
      double[] coefficients,
      double[] residuals,
      double[][] unscaled,
      double squares,
      double about) {
    this.coefficients = coefficients;
    this.residuals = residuals;
    this.unscaled = unscaled;
    this.squares = squares;
    this.about = about;
  }

  /**
   * @param model one row for each y, one column for each coefficient; a constant is a column of 1
   * @throws IllegalArgumentException if there are not more rows than columns, or a column depends
   *     on those before it
   */
  public static LinearFit of(double[][] model, double[] y) {
    if (model.length != y.length || y.length == 0 || y.length <= model[0].length) {
      throw new IllegalArgumentException(
          "a fit needs more values than coefficients: "
              + y.length
              + " values, "
              + (model.length == 0 ? 0 : model[0].length)
              + " coefficients, "
              + model.length
              + " rows");
    }
    Householder qr = new Householder(model);
    double[] b = new double[model[0].length];
    double[] r = new double[y.length];
    for (int i = 0; i <= REFINEMENTS; i++) {
      refine(qr, model, y, b, r);
    }
    PreciseSum squares = new PreciseSum();
    for (double residual : r) {
      squares.addProduct(residual, residual);
    }
    return new LinearFit(b, r, inverse(qr, b.length), squares.value(), about(model, y));
  }

  /** Straight line {@code c₀ + c₁·x}. */
  public static LinearFit line(double[] x, double[] y) {
    return polynomial(x, y, 1);
  }

  /** Polynomial {@code c₀ + c₁·x + … + cₙ·xⁿ}. */
  public static LinearFit polynomial(double[] x, double[] y, int degree) {
    double[][] model = new double[x.length][degree + 1];
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k <= degree; k++) {
        model[i][k] = Math.pow(x[i], k);
      }
    }
    return of(model, y);
  }

  /** One step on r + Xb = y, Xᵀr = 0; the first, from zeros, is the plain solution. */
  private static void refine(Householder qr, double[][] x, double[] y, double[] b, double[] r) {
    double[] f = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      PreciseSum sum = new PreciseSum().add(y[i]).add(-r[i]);
      for (int j = 0; j < b.length; j++) {
        sum.addProduct(-x[i][j], b[j]);
      }
      f[i] = sum.value();
    }
    double[] g = new double[b.length];
    for (int j = 0; j < b.length; j++) {
      PreciseSum sum = new PreciseSum();
      for (int i = 0; i < y.length; i++) {
        sum.addProduct(-x[i][j], r[i]);
      }
      g[j] = sum.value();
    }
    double[] h = qr.forward(g);
    qr.transposed(f);
    double[] top = new double[b.length];
    for (int j = 0; j < b.length; j++) {
      top[j] = f[j] - h[j];
      f[j] = h[j];
    }
    double[] db = qr.backward(top);
    qr.rotate(f);
    for (int j = 0; j < b.length; j++) {
      b[j] += db[j];
    }
    for (int i = 0; i < y.length; i++) {
      r[i] += f[i];
    }
  }

  private static double[][] inverse(Householder qr, int n) {
    double[][] columns = new double[n][];
    for (int j = 0; j < n; j++) {
      double[] unit = new double[n];
      unit[j] = 1;
      columns[j] = qr.backward(qr.forward(unit));
    }
    return columns;
  }

  /** Sum of squares of y about its mean, or about zero if the model has no constant column. */
  private static double about(double[][] model, double[] y) {
    for (int j = 0; j < model[0].length; j++) {
      boolean constant = model[0][j] != 0;
      for (double[] row : model) {
        constant &= row[j] == model[0][j];
      }
      if (constant) {
        return Deviations.of(y).sumOfSquares();
      }
    }
    PreciseSum sum = new PreciseSum();
    for (double value : y) {
      sum.addProduct(value, value);
    }
    return sum.value();
  }

  public double coefficient(int i) {
    return coefficients[i];
  }

  /** Standard uncertainty of a coefficient, from the scatter about the fit. */
  public double u(int i) {
    return Math.sqrt(covariance(i, i));
  }

  /** Standard uncertainty of a coefficient for each unit of the scatter about the fit. */
  public double unscaled(int i) {
    return Math.sqrt(unscaled[i][i]);
  }

  public double covariance(int i, int j) {
    return unscaled[i][j] * squares / freedom();
  }

  public double correlation(int i, int j) {
    return unscaled[i][j] / Math.sqrt(unscaled[i][i] * unscaled[j][j]);
  }

  /** Values less coefficients. */
  public int freedom() {
    return residuals.length - coefficients.length;
  }

  public double residual(int i) {
    return residuals[i];
  }

  public double sumOfSquares() {
    return squares;
  }

  /** Standard deviation about the fit. */
  public double residualSd() {
    return Math.sqrt(squares / freedom());
  }

  /** Share of the scatter that the model explains; about zero where it has no constant. */
  public double rSquared() {
    return 1 - squares / about;
  }

  /** Value of the fit for one row of the model. */
  public double at(double... row) {
    PreciseSum sum = new PreciseSum();
    for (int j = 0; j < coefficients.length; j++) {
      sum.addProduct(row[j], coefficients[j]);
    }
    return sum.value();
  }

  /** Standard uncertainty of {@link #at}: of the curve, not of a further single value. */
  public double uAt(double... row) {
    double variance = 0;
    for (int i = 0; i < coefficients.length; i++) {
      for (int j = 0; j < coefficients.length; j++) {
        variance += row[i] * row[j] * covariance(i, j);
      }
    }
    return Math.sqrt(Math.max(0, variance));
  }
}
