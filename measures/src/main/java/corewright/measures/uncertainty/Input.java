package corewright.measures.uncertainty;

import corewright.measures.Measurement;
import corewright.measures.Unit;

/**
 * One thing that a result depends on.
 *
 * @param name unique in its budget
 * @param estimate with standard uncertainty
 * @param freedom degrees of freedom of that uncertainty, above 0; infinite where it is taken as
 *     known
 * @param distribution of the possible values
 * @see "JCGM 100:2008, 4.1.6 and G.4"
 */
public record Input(String name, Measurement estimate, double freedom, Distribution distribution) {
  public Input {
    if (!(freedom > 0)) {
      throw new IllegalArgumentException(name + ": degrees of freedom are above 0, not " + freedom);
    }
  }

  /** From a certificate, or any statement of a standard uncertainty that is taken as known. */
  public static Input known(String name, double value, double u, Unit unit) {
    return new Input(
        name, new Measurement(value, u, unit), Double.POSITIVE_INFINITY, Distribution.NORMAL);
  }

  /** Within ± {@code halfWidth} of a value: type B from bounds (JCGM 100, 4.3.7). */
  public static Input within(
      String name, double value, double halfWidth, Distribution distribution, Unit unit) {
    return new Input(
        name,
        new Measurement(value, distribution.u(halfWidth), unit),
        Double.POSITIVE_INFINITY,
        distribution);
  }

  /** Repeated readings (JCGM 100, 4.2). */
  public static Input repeated(String name, TypeA readings, Unit unit) {
    return new Input(
        name,
        new Measurement(readings.mean(), readings.u(), unit),
        readings.freedom(),
        Distribution.NORMAL);
  }

  /**
   * The same with other degrees of freedom, for instance from the reliability of u itself: ν =
   * 1/(2·(Δu/u)²) (JCGM 100, G.4.2).
   */
  public Input withFreedom(double degrees) {
    return new Input(name, estimate, degrees, distribution);
  }

  double value() {
    return estimate.value();
  }

  double u() {
    return estimate.u();
  }
}
