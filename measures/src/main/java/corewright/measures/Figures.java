package corewright.measures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as sentences and documents print them: value, U and limit end at the same digit. Decimal
 * point always; a screen that follows a locale sets its own mark.
 */
public final class Figures {
  private static final char MINUS = '−';

  private Figures() {}

  /** Rounding may take this share off U; where it would take more, U is rounded up. */
  private static final double MOST_ROUNDED_OFF = 0.05;

  private static final int FOR_SMALL = 2;

  /**
   * Value ± U with unit, U = 2u and never 0 for want of digits, as {@code 43.28 ± 0.02 V}; a count
   * is an integer alone.
   */
  public static String withU(Measurement m) {
    String half = expanded(m);
    String symbol = m.unit() == Unit.ONE ? "" : " " + m.unit().symbol();
    return value(m) + (half.isEmpty() ? "" : " ± " + half) + symbol;
  }

  /** The value alone, with the decimals that its U deserves. */
  public static String value(Measurement m) {
    return number(m.value(), m.counted() ? 0 : decimals(m));
  }

  /**
   * U alone, with the decimals of {@link #value}, at least one step of the last; empty where there
   * is none.
   *
   * @see "EA-4/02, 6.3: U rounded as usual, but up where it would shrink by more than 5 %"
   */
  public static String expanded(Measurement m) {
    if (!(m.u() > 0)) {
      return "";
    }
    int decimals = decimals(m);
    double step = Math.pow(10, -decimals);
    double rounded = Math.max(step, rounded(m.expanded(2), decimals));
    boolean tooSmall = rounded < (1 - MOST_ROUNDED_OFF) * m.expanded(2);
    return number(tooSmall ? rounded + step : rounded, decimals);
  }

  /**
   * A limit or margin with the last digit of {@code m}, as {@code 46.50 V}, but no finer than its
   * unit is usually read; with more where that would change it by more than half a percent.
   */
  public static String like(double value, Measurement m) {
    int decimals = Math.min(decimals(m), finest(m.unit()));
    while (decimals < finest(m.unit())
        && Math.abs(rounded(value, decimals) - value) > Math.abs(value) / 200) {
      decimals++;
    }
    return number(value, decimals) + " " + m.unit().symbol();
  }

  /** A number that a person chose, with the decimals that it has, at most four. */
  public static String plain(double value) {
    String text = number(value, 4);
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
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
    return Math.max(0, Math.min(finest(m), (beginsWithOne ? 1 : 0) - magnitude));
  }

  /**
   * Most decimals of a value: those of its unit, and up to {@value #FOR_SMALL} more where a value
   * that is more than its U would keep fewer than two figures, as a line of 0.8 mV would.
   */
  private static int finest(Measurement m) {
    int most = finest(m.unit());
    if (Math.abs(m.value()) <= m.expanded(2)) {
      return most;
    }
    int forTwoFigures = 1 - (int) Math.floor(Math.log10(Math.abs(m.value())));
    return Math.max(most, Math.min(most + FOR_SMALL, forTwoFigures));
  }

  private static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.rint(value * scale) / scale;
  }

  /** Most decimals that anybody reads: millivolts, microseconds. */
  private static int finest(Unit unit) {
    return switch (unit) {
      case SECOND, FARAD, JOULE -> 6;
      case OHM -> 4;
      case HERTZ -> 1;
      default -> 3;
    };
  }
}
