package corewright.measures.temperature;

import corewright.measures.Measurement;
import corewright.measures.Unit;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Thermocouple type K on ITS-90: nickel-chromium against nickel-aluminium. Temperatures are found
 * by inverting the reference function itself, not by the published inverse polynomials, which are
 * up to 0.06 °C off.
 *
 * @see "IEC 60584-1 = NIST Monograph 175, reference function of type K"
 */
public final class TypeK {
  /** Below this the function is so flat that no temperature can be read from it. */
  public static final double LOWEST_C = -200;

  public static final double HIGHEST_C = 1372;

  /** mV by °C below 0 °C. */
  private static final PolynomialFunction COLD =
      new PolynomialFunction(
          new double[] {
            0.0,
            0.394501280250E-01,
            0.236223735980E-04,
            -0.328589067840E-06,
            -0.499048287770E-08,
            -0.675090591730E-10,
            -0.574103274280E-12,
            -0.310888728940E-14,
            -0.104516093650E-16,
            -0.198892668780E-19,
            -0.163226974860E-22
          });

  /** mV by °C from 0 °C on, without the bump about 127 °C. */
  private static final PolynomialFunction HOT =
      new PolynomialFunction(
          new double[] {
            -0.176004136860E-01,
            0.389212049750E-01,
            0.185587700320E-04,
            -0.994575928740E-07,
            0.318409457190E-09,
            -0.560728448890E-12,
            0.560750590590E-15,
            -0.320207200030E-18,
            0.971511471520E-22,
            -0.121047212750E-25
          });

  private static final double BUMP_MV = 0.118597600000;
  private static final double BUMP_WIDTH = -0.118343200000E-03;
  private static final double BUMP_C = 126.9686;

  private TypeK() {}

  /**
   * Voltage of a couple whose other junction is at 0 °C, mV.
   *
   * @param temperature_C −200 to 1372
   */
  public static double emf_mV(double temperature_C) {
    requireRange(temperature_C, "temperature");
    if (temperature_C < 0) {
      return COLD.value(temperature_C);
    }
    double d = temperature_C - BUMP_C;
    return HOT.value(temperature_C) + BUMP_MV * Math.exp(BUMP_WIDTH * d * d);
  }

  /**
   * Temperature of the measuring junction. The cold junction is added as a voltage: the function is
   * bent, and adding degrees instead is most of a degree off at 100 °C.
   *
   * @param emf_mV between the terminals
   * @param coldJunction_C of the terminals
   * @throws IllegalArgumentException if no temperature between −200 °C and 1372 °C gives that
   *     voltage, as with an open couple
   */
  public static double temperature_C(double emf_mV, double coldJunction_C) {
    requireRange(coldJunction_C, "cold junction");
    double sum = emf_mV + emf_mV(coldJunction_C);
    if (!(sum >= emf_mV(LOWEST_C) && sum <= emf_mV(HIGHEST_C))) {
      throw new IllegalArgumentException(
          emf_mV
              + " mV with terminals at "
              + coldJunction_C
              + " °C is no temperature of type K: open couple or wrong polarity?");
    }
    UnivariateFunction off = t -> emf_mV(t) - sum;
    return new BrentSolver(1e-12, 1e-10).solve(200, off, LOWEST_C, HIGHEST_C);
  }

  /** Slope of {@link #emf_mV}, mV/K: central difference over 2 mK, good to 1e-8 of itself. */
  static double slope(double temperature_C) {
    double t = Math.max(LOWEST_C + 1e-3, Math.min(HIGHEST_C - 1e-3, temperature_C));
    return (emf_mV(t + 1e-3) - emf_mV(t - 1e-3)) / 2e-3;
  }

  /**
   * Temperature with what the voltage and the cold junction leave uncertain. The couple's own
   * tolerance (class 1: 1.5 °C up to 375 °C, from memory) is the caller's to add.
   *
   * @param emf in V
   * @param coldJunction in °C
   */
  public static Measurement temperature(Measurement emf, Measurement coldJunction) {
    double t = temperature_C(1000 * emf.value(), coldJunction.value());
    double here = slope(t);
    double byVoltage = 1000 * emf.u() / here;
    double byJunction = slope(coldJunction.value()) / here * coldJunction.u();
    return new Measurement(t, Math.hypot(byVoltage, byJunction), Unit.CELSIUS);
  }

  private static void requireRange(double temperature_C, String what) {
    if (!(temperature_C >= LOWEST_C && temperature_C <= HIGHEST_C)) {
      throw new IllegalArgumentException(
          what + " of type K lies between −200 °C and 1372 °C, not " + temperature_C);
    }
  }
}
