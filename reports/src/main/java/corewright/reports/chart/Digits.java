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
  private final Numerals numerals;

  private Digits(double factor, String symbol, Numerals numerals) {
    this.factor = factor;
    this.symbol = symbol;
    this.numerals = numerals;
  }

  /** For everything that is said about one limit: its own size chooses the unit. */
  public static Digits of(Limit limit, Numerals numerals) {
    return of(
        limit.quantity().unit(),
        Math.max(Math.abs(limit.pass()), Math.abs(limit.fail())),
        numerals);
  }

  /** For readings of about the size of {@code size}, in {@code unit}. */
  public static Digits of(Unit unit, double size, Numerals numerals) {
    boolean small = size > 0 && size < 0.1;
    return switch (unit) {
      case SECOND -> small ? new Digits(1e3, "ms", numerals) : new Digits(1, "s", numerals);
      case OHM -> small ? new Digits(1e3, "mΩ", numerals) : new Digits(1, "Ω", numerals);
      case FARAD -> size < 0.1 ? new Digits(1e6, "µF", numerals) : new Digits(1, "F", numerals);
      case ONE -> new Digits(1, "", numerals);
      default -> new Digits(1, unit.symbol(), numerals);
    };
  }

  /** The value alone, as {@code 47.62}. */
  public String value(Measurement m) {
    return numerals.set(plain(m));
  }

  /** U with its unit, as {@code ± 0.10 V}; the unit alone where there is no U. */
  public String u(Measurement m) {
    String expanded = Figures.expanded(scaled(m));
    String half = expanded.isEmpty() ? "" : "± " + numerals.set(expanded) + " ";
    return Words.tied((half + symbol).strip());
  }

  /** The distance to a limit, without a unit, with the digits of the reading. */
  public String margin(double margin, Measurement m) {
    String value = plain(m);
    int point = value.indexOf('.');
    return numerals.number(margin * factor, point < 0 ? 0 : value.length() - point - 1);
  }

  /** The same with its unit. */
  public String marginWithUnit(double margin, Measurement m) {
    return Words.tied((margin(margin, m) + " " + symbol).strip());
  }

  /** The limit with the last digit of the reading, but never rounded: a limit is exact. */
  public String limit(Limit limit, Optional<Measurement> reading) {
    return exactly(limit.pass(), reading);
  }

  /** Where it fails, in the same way. */
  public String failing(Limit limit, Optional<Measurement> reading) {
    return exactly(limit.fail(), reading);
  }

  private String exactly(double bound, Optional<Measurement> reading) {
    String exact = numerals.plain(bound * factor);
    return reading
            .map(m -> margin(bound, m))
            .filter(like -> like.length() >= exact.length())
            .orElse(exact)
        + " "
        + symbol;
  }

  /** The value with a point, whatever the region. */
  private String plain(Measurement m) {
    return Figures.value(scaled(m));
  }

  private Measurement scaled(Measurement m) {
    return new Measurement(m.value() * factor, m.u() * factor, m.unit());
  }
}
