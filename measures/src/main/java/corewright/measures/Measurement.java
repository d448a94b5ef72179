package corewright.measures;

import java.util.Locale;
import java.util.Objects;

/**
 * A best estimate with its standard uncertainty. Immutable; two numbers, one unit.
 *
 * @param value best estimate, in {@code unit}; finite
 * @param u standard uncertainty (one standard deviation), in {@code unit}; finite, never negative
 * @param unit unit of both numbers
 * @see "JCGM 100:2008, 2.3.1 standard uncertainty and 6.2.1 expanded uncertainty"
 */
public record Measurement(double value, double u, Unit unit) {

  public Measurement {
    Objects.requireNonNull(unit, "unit");
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value is not finite: " + value);
    }
    if (!(u >= 0) || Double.isInfinite(u)) { // the negated form also refuses NaN
      throw new IllegalArgumentException("uncertainty is not in [0, ∞): " + u);
    }
  }

  /** Half-width of the coverage interval, U = k·u, in {@link #unit}. */
  public double expanded(double k) {
    return k * u;
  }

  /** Whether it was counted and not measured: it has neither unit nor uncertainty. */
  public boolean counted() {
    return unit == Unit.ONE && u == 0;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "%.5g %s ± %.2g %s (k=2)", value, unit.symbol(), expanded(2), unit.symbol());
  }
}
