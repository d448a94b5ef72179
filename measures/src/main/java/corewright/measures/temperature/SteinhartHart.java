package corewright.measures.temperature;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * NTC thermistor by three coefficients: 1/T = a + b·ln R + c·(ln R)³, T in kelvin, R in ohm.
 *
 * @see "Steinhart and Hart, Calibration curves for thermistors, Deep-Sea Research 15 (1968) 497"
 */
public record SteinhartHart(double a, double b, double c) {
  static final double ZERO_CELSIUS_K = 273.15;

  /** A resistance at a temperature, from a calibration or a data sheet. */
  public record Point(double resistance_ohm, double temperature_C) {
    public Point {
      if (!(resistance_ohm > 0) || !(temperature_C > -ZERO_CELSIUS_K)) {
        throw new IllegalArgumentException(
            resistance_ohm + " Ω at " + temperature_C + " °C is no point of a thermistor");
      }
    }
  }

  /** Exactly through three points at three temperatures. */
  public static SteinhartHart through(Point one, Point two, Point three) {
    double[][] m = new double[3][];
    double[] y = new double[3];
    Point[] points = {one, two, three};
    for (int i = 0; i < 3; i++) {
      double log = Math.log(points[i].resistance_ohm());
      m[i] = new double[] {1, log, log * log * log};
      y[i] = 1 / (points[i].temperature_C() + ZERO_CELSIUS_K);
    }
    LUDecomposition lu = new LUDecomposition(new Array2DRowRealMatrix(m, false));
    if (!lu.getSolver().isNonSingular()) {
      throw new IllegalArgumentException("the three points have fewer than three resistances");
    }
    double[] x = lu.getSolver().solve(new ArrayRealVector(y, false)).toArray();
    return new SteinhartHart(x[0], x[1], x[2]);
  }

  public double temperature_C(double resistance_ohm) {
    if (!(resistance_ohm > 0) || Double.isInfinite(resistance_ohm)) {
      throw new IllegalArgumentException(
          resistance_ohm + " Ω is no temperature of a thermistor: open or shorted?");
    }
    double log = Math.log(resistance_ohm);
    return 1 / (a + log * (b + c * log * log)) - ZERO_CELSIUS_K;
  }
}
