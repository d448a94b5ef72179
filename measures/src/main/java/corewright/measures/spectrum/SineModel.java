package corewright.measures.spectrum;

import java.util.Arrays;
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
    Sums sums = new Sums(x, omega, centre, size == 4 ? last : new double[2]);
    double[][] normal = sums.normal(size);
    double[] right = Arrays.copyOf(sums.right, size);
    LUDecomposition lu = new LUDecomposition(new Array2DRowRealMatrix(normal, false), 0);
    if (!lu.getSolver().isNonSingular()) {
      throw new IllegalArgumentException(
          "the record does not determine a sine of " + omega + " rad per sample");
    }
    RealMatrix inverse = lu.getSolver().getInverse();
    double[] p = lu.getSolver().solve(new ArrayRealVector(right, false)).toArray();
    return new SineModel(omega, centre, p, inverse);
  }

  /**
   * One pass over the record, with a sum for each product: four times as fast as rows of a table.
   */
  private static final class Sums {
    private final double[][] products = new double[4][4];
    private final double[] right = new double[4];

    /**
     * @param last cosine and sine part about which the step of omega is counted
     */
    Sums(double[] x, double omega, double centre, double[] last) {
      Turning turning = new Turning(omega, centre);
      double sC = 0;
      double sS = 0;
      double sW = 0;
      double sCC = 0;
      double sCS = 0;
      double sSS = 0;
      double sWC = 0;
      double sWS = 0;
      double sWW = 0;
      double xC = 0;
      double xS = 0;
      double x1 = 0;
      double xW = 0;
      for (int i = 0; i < x.length; i++) {
        turning.to(i);
        double c = turning.cos();
        double s = turning.sin();
        double w = (i - centre) * (last[1] * c - last[0] * s);
        sC += c;
        sS += s;
        sW += w;
        sCC += c * c;
        sCS += c * s;
        sSS += s * s;
        sWC += w * c;
        sWS += w * s;
        sWW += w * w;
        xC += x[i] * c;
        xS += x[i] * s;
        x1 += x[i];
        xW += x[i] * w;
      }
      products[0] = new double[] {sCC, sCS, sC, sWC};
      products[1] = new double[] {sCS, sSS, sS, sWS};
      products[2] = new double[] {sC, sS, x.length, sW};
      products[3] = new double[] {sWC, sWS, sW, sWW};
      right[0] = xC;
      right[1] = xS;
      right[2] = x1;
      right[3] = xW;
    }

    double[][] normal(int size) {
      return Arrays.stream(products)
          .limit(size)
          .map(row -> Arrays.copyOf(row, size))
          .toArray(double[][]::new);
    }
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
