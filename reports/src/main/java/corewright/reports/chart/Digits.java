package corewright.reports.chart;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.profiles.Limit;
import java.util.Optional;

/** The parts of a reading for columns: value, U, limit and margin end at the same digit. */
public final class Digits {
  private Digits() {}

  /** The value alone, as {@code 47.62}. */
  public static String value(Measurement m) {
    String words = Figures.withU(m);
    return words.substring(0, words.indexOf(' '));
  }

  /** U with its unit, as {@code ± 0.10 V}; the unit alone where there is no U. */
  public static String u(Measurement m) {
    String words = Figures.withU(m);
    int plus = words.indexOf('±');
    return Words.tied(plus < 0 ? m.unit().symbol() : words.substring(plus));
  }

  /** The distance to a limit, without a unit, with the digits of the reading. */
  public static String margin(double margin, Measurement m) {
    String value = value(m);
    int point = value.indexOf('.');
    return Figures.number(margin, point < 0 ? 0 : value.length() - point - 1);
  }

  /** The limit with the last digit of the reading, but never rounded: a limit is exact. */
  public static String limit(Limit limit, Optional<Measurement> reading) {
    String exact = Scales.plain(limit.pass()) + " " + limit.quantity().unit().symbol();
    return reading
        .map(m -> margin(limit.pass(), m) + " " + m.unit().symbol())
        .filter(like -> like.length() >= exact.length())
        .orElse(exact);
  }
}
