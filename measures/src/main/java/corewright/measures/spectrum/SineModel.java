package corewright.measures.spectrum;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * One linear step of a sine fit. Time is counted from the middle of the record, which keeps the
 * equations well apart and the frequency apart from the phase.
 */
final class SineModel {
  private final double omega;
  private final double centre;
  private final double[] p;
  private final RealMatrix inverse;

  private SineModel(double omega, double centre, double[] p, RealMatrix inverse) {
    this.omega = omega;
    this.centre = centre;
    this.p = p;
    this.inverse = inverse;
  }

  /** Cosine, sine, offset at {@code omega} radians per sample. */
  static SineModel three(double[] x, double omega) {
    return solve(x, omega, new double[3], 3);
  }

  /** The same and a step of omega, about the cosine and sine of {@code last}. */
  static SineModel four(double[] x, double omega, double[] last) {
    return solve(x, omega, last, 4);
  }

  private static SineModel solve(double[] x, double omega, double[] last, int size) {
    double centre = (x.length - 1) / 2.0;
    double[][] normal = new double[size][size];
    double[] right = new double[size];
    double[] row = new double[size];
    Turning turning = new Turning(omega, centre);
    for (int i = 0; i < x.length; i++) {
      double t = i - centre;
      turning.to(i);
      row[0] = turning.cos();
      row[1] = turning.sin();
      row[2] = 1;
      if (size == 4) {
        row[3] = t * (last[1] * row[0] - last[0] * row[1]);
      }
      for (int j = 0; j < size; j++) {
        right[j] += row[j] * x[i];
        for (int k = 0; k <= j; k++) {
          normal[j][k] += row[j] * row[k];
          normal[k][j] = normal[j][k];
        }
      }
    }
    LUDecomposition lu = new LUDecomposition(new Array2DRowRealMatrix(normal, false), 0);
    if (!lu.getSolver().isNonSingular()) {
      throw new IllegalArgumentException(
          "the record does not determine a sine of " + omega + " rad per sample");
    }
    RealMatrix inverse = lu.getSolver().getInverse();
    double[] p = lu.getSolver().solve(new ArrayRealVector(right, false)).toArray();
    return new SineModel(omega, centre, p, inverse);
  }

  double[] p() {
    return p;
  }

  RealMatrix inverse() {
    return inverse;
  }

  /** Sample index, with its half, that time is counted from. */
  double centre() {
    return centre;
  }

  double squaresOfResiduals(double[] x) {
    double sum = 0;
    Turning turning = new Turning(omega, centre);
    for (int i = 0; i < x.length; i++) {
      turning.to(i);
      double r = x[i] - p[0] * turning.cos() - p[1] * turning.sin() - p[2];
      sum += r * r;
    }
    return sum;
  }
}
