package corewright.measures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as sentences and documents print them: value, U and limit end at the same digit. Decimal
 * point always; a screen that follows a locale sets its own mark.
 */
public final class Figures {
  private static final int MOST_DECIMALS = 6;
  private static final char MINUS = '−';

  private Figures() {}

  /** Value ± U with unit, U = 2u, as {@code 43.28 ± 0.02 V}. */
  public static String withU(Measurement m) {
    return number(m.value(), decimals(m))
        + (m.u() > 0 ? " ± " + number(m.expanded(2), decimals(m)) : "")
        + " "
        + m.unit().symbol();
  }

  /** A limit or margin with the last digit of {@code m}, as {@code 46.50 V}. */
  public static String like(double value, Measurement m) {
    return number(value, decimals(m)) + " " + m.unit().symbol();
  }

  /** A number with a fixed count of decimals and a true minus. */
  public static String number(double value, int decimals) {
    String digits =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    boolean zero = digits.chars().noneMatch(c -> c >= '1' && c <= '9');
    if (!digits.startsWith("-")) {
      return digits;
    }
    return zero ? digits.substring(1) : MINUS + digits.substring(1);
  }

  /**
   * Decimals that U deserves: two significant figures where it begins with a 1, else one.
   *
   * @see "JCGM 100:2008, 7.2.6: at most two significant digits"
   */
  private static int decimals(Measurement m) {
    double expanded = m.expanded(2);
    if (!(expanded > 0)) {
      return 2;
    }
    int magnitude = (int) Math.floor(Math.log10(expanded));
    boolean beginsWithOne = expanded / Math.pow(10, magnitude) < 1.95;
    return Math.max(0, Math.min(MOST_DECIMALS, (beginsWithOne ? 1 : 0) - magnitude));
  }
}
