package corewright.reports.chart;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import java.util.Optional;

/**
 * The parts of a reading for columns: value, U, limit and margin end at the same digit, and small
 * seconds, ohms and farads are given in milliseconds, milliohms and microfarads.
 */
public final class Digits {
  private final double factor;
  private final String symbol;

  private Digits(double factor, String symbol) {
    this.factor = factor;
    this.symbol = symbol;
  }

  /** For everything that is said about one limit: its own size chooses the unit. */
  public static Digits of(Limit limit) {
    return of(limit.quantity().unit(), Math.max(Math.abs(limit.pass()), Math.abs(limit.fail())));
  }

  /** For readings of about the size of {@code size}, in {@code unit}. */
  public static Digits of(Unit unit, double size) {
    boolean small = size > 0 && size < 0.1;
    return switch (unit) {
      case SECOND -> small ? new Digits(1e3, "ms") : new Digits(1, "s");
      case OHM -> small ? new Digits(1e3, "mΩ") : new Digits(1, "Ω");
      case FARAD -> size < 0.1 ? new Digits(1e6, "µF") : new Digits(1, "F");
      case ONE -> new Digits(1, "");
      default -> new Digits(1, unit.symbol());
    };
  }

  /** The value alone, as {@code 47.62}. */
  public String value(Measurement m) {
    String words = Figures.withU(scaled(m));
    return words.substring(0, words.indexOf(' '));
  }

  /** U with its unit, as {@code ± 0.10 V}; the unit alone where there is no U. */
  public String u(Measurement m) {
    String words = Figures.withU(scaled(m));
    int from = words.indexOf('±');
    int unit = words.lastIndexOf(' ');
    return Words.tied(from < 0 ? symbol : words.substring(from, unit) + " " + symbol);
  }

  /** The distance to a limit, without a unit, with the digits of the reading. */
  public String margin(double margin, Measurement m) {
    String value = value(m);
    int point = value.indexOf('.');
    return Figures.number(margin * factor, point < 0 ? 0 : value.length() - point - 1);
  }

  /** The same with its unit. */
  public String marginWithUnit(double margin, Measurement m) {
    return margin(margin, m) + " " + symbol;
  }

  /** The limit with the last digit of the reading, but never rounded: a limit is exact. */
  public String limit(Limit limit, Optional<Measurement> reading) {
    String exact = Scales.plain(limit.pass() * factor);
    return reading
            .map(m -> margin(limit.pass(), m))
            .filter(like -> like.length() >= exact.length())
            .orElse(exact)
        + " "
        + symbol;
  }

  private Measurement scaled(Measurement m) {
    return new Measurement(m.value() * factor, m.u() * factor, m.unit());
  }
}
