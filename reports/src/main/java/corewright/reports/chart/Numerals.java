package corewright.reports.chart;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.text.DecimalFormatSymbols;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Numbers with the decimal mark that people of a region write. On paper and in pictures only: what
 * a machine reads keeps the point.
 *
 * @param mark a point or a comma
 * @see "SI Brochure, 9th edition, 5.4.4: either, on the line, as is customary"
 */
public record Numerals(char mark) {
  private static final char POINT = '.';
  private static final char COMMA = ',';

  /** A number that stands alone: no part of a revision, an address or a name. */
  private static final Pattern IN_A_SENTENCE =
      Pattern.compile("(?<![\\p{L}\\p{N}.,_/:-])([0-9]+)\\.([0-9]+)(?![\\p{L}_/:-]|[.,]?[0-9])");

  /**
   * As the languages of the region have it (Unicode CLDR, as Java carries it): its English where
   * there is one, for the texts are English; else most of its languages; a point where nothing is
   * known.
   */
  public static Numerals of(Locale region) {
    String country = region.getCountry();
    if (country.isEmpty()) {
      return new Numerals(mark(region));
    }
    Locale english = new Locale.Builder().setLanguage("en").setRegion(country).build();
    Locale[] known =
        Arrays.stream(Locale.getAvailableLocales())
            .filter(locale -> locale.getCountry().equals(country))
            .toArray(Locale[]::new);
    if (Arrays.asList(known).contains(english)) {
      return new Numerals(mark(english));
    }
    long commas = Arrays.stream(known).filter(locale -> mark(locale) == COMMA).count();
    return new Numerals(2 * commas > known.length ? COMMA : POINT);
  }

  private static char mark(Locale locale) {
    return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == COMMA ? COMMA : POINT;
  }

  /** A text that holds a number and nothing with a point of another kind. */
  String set(String number) {
    return number.replace(POINT, mark);
  }

  /** A figure of a scale: no more decimals than it needs. */
  String plain(double value) {
    return set(Scales.plain(value));
  }

  /** As {@link Figures#number}. */
  public String number(double value, int decimals) {
    return set(Figures.number(value, decimals));
  }

  /** As {@link Figures#withU}. */
  public String withU(Measurement m) {
    return set(Figures.withU(m));
  }

  /** A sentence that the record keeps with points; dates, names and revisions stay as they are. */
  public String sentence(String kept) {
    return mark == POINT ? kept : IN_A_SENTENCE.matcher(kept).replaceAll("$1" + mark + "$2");
  }
}
