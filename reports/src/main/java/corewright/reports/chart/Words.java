package corewright.reports.chart;

import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Pattern;

/**
 * The texts of charts and documents, from {@code words.properties} beside the class that uses them.
 * {@code {0}} stands for the first value; apostrophes and braces need no escape.
 */
public final class Words {
  private static final String TIE = "\u00A0";
  private static final Pattern BEFORE_UNIT =
      Pattern.compile(
          "(?<=[0-9]) (?=(?:V/min|V/s|mV|V|mA|A|mΩ|Ω|ms|s|kHz|Hz|%|°C|W|µF|F|J|K)(?![\\p{L}]))");

  private final ResourceBundle bundle;
  private final Numerals numerals;

  private Words(ResourceBundle bundle, Numerals numerals) {
    this.bundle = bundle;
    this.numerals = numerals;
  }

  /**
   * The texts beside {@code owner} in the language of {@code locale}, or in English; numbers as its
   * region writes them.
   */
  public static Words of(Class<?> owner, Locale locale) {
    return new Words(
        ResourceBundle.getBundle(
            owner.getPackageName() + ".words",
            locale,
            owner.getClassLoader(),
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_DEFAULT)),
        Numerals.of(locale));
  }

  /** How the region writes a number. */
  public Numerals numerals() {
    return numerals;
  }

  /**
   * The text of {@code key} with its values filled in.
   *
   * @throws java.util.MissingResourceException if there is no such text
   */
  public String get(String key, Object... values) {
    String text = numerals.sentence(bundle.getString(key));
    for (int i = 0; i < values.length; i++) {
      text = text.replace("{" + i + "}", values[i].toString());
    }
    return text;
  }

  public boolean has(String key) {
    return bundle.containsKey(key);
  }

  /**
   * A text in which a number, its U and its unit stay together. This family's space is a sixth of
   * an em wide: the thin space that belongs before a unit.
   *
   * @see "SI Brochure, 9th edition, 5.4.3"
   */
  public static String tied(String text) {
    return BEFORE_UNIT.matcher(text).replaceAll(TIE).replace(" ± ", TIE + "±" + TIE);
  }
}
