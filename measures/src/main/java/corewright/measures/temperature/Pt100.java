package corewright.measures.temperature;

import corewright.measures.Measurement;
import corewright.measures.Unit;

/**
 * Platinum resistance thermometer, 100 Ω at 0 °C.
 *
 * @see "IEC 60751: R = 100·(1 + A·t + B·t² + C·(t − 100)·t³), C only below 0 °C"
 */
public final class Pt100 {
  private static final double R0_OHM = 100;
  private static final double A = 3.9083e-3;
  private static final double B = -5.775e-7;
  private static final double C = -4.183e-12;
  private static final double LOWEST_C = -200;
  private static final double HIGHEST_C = 850;

  private Pt100() {}

  /** Half-width of what the standard lets a sensor be off (IEC 60751, from memory). */
  public enum Tolerance {
    AA(0.1, 0.0017),
    A(0.15, 0.002),
    B(0.3, 0.005),
    C(0.6, 0.01);

    private final double atZero_C;
    private final double perDegree;

    Tolerance(double atZero_C, double perDegree) {
      this.atZero_C = atZero_C;
      this.perDegree = perDegree;
    }

    public double halfWidth_C(double temperature_C) {
      return atZero_C + perDegree * Math.abs(temperature_C);
    }
  }

  /**
   * @param temperature_C −200 to 850
   */
  public static double resistance_ohm(double temperature_C) {
    double t = temperature_C;
    if (!(t >= LOWEST_C && t <= HIGHEST_C)) {
      throw new IllegalArgumentException(
          "a Pt100 is defined from −200 °C to 850 °C, not at " + temperature_C);
    }
    double cold = t < 0 ? C * (t - 100) * t * t * t : 0;
    return R0_OHM * (1 + t * (A + t * B) + cold);
  }

  /**
   * @throws IllegalArgumentException if the resistance is that of no temperature in range, as with
   *     an open or shorted sensor
   */
  public static double temperature_C(double resistance_ohm) {
    if (!(resistance_ohm >= resistance_ohm(LOWEST_C)
        && resistance_ohm <= resistance_ohm(HIGHEST_C))) {
      throw new IllegalArgumentException(
          resistance_ohm + " Ω is no temperature of a Pt100: open, shorted or another sensor?");
    }
    double ratio = resistance_ohm / R0_OHM;
    double t = (-A + Math.sqrt(A * A - 4 * B * (1 - ratio))) / (2 * B);
    // Exact from 0 °C up; below, the last term is small and Newton's steps from there settle at
    // once.
    for (int i = 0; i < 6 && t < 0; i++) {
      double clamped = Math.max(LOWEST_C, t);
      t = clamped - (resistance_ohm(clamped) - resistance_ohm) / slope(clamped);
    }
    return Math.max(LOWEST_C, t);
  }

  /** dR/dt, Ω/K. */
  static double slope(double t) {
    double cold = t < 0 ? C * t * t * (4 * t - 300) : 0;
    return R0_OHM * (A + 2 * B * t + cold);
  }

  /** Temperature with what the resistance and the sensor's class leave uncertain. */
  public static Measurement temperature(Measurement resistance, Tolerance tolerance) {
    double t = temperature_C(resistance.value());
    double sensor = tolerance.halfWidth_C(t) / Math.sqrt(3);
    return new Measurement(t, Math.hypot(resistance.u() / slope(t), sensor), Unit.CELSIUS);
  }
}
