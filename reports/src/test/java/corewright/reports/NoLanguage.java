package corewright.reports;

import java.util.Locale;

/**
 * A language that nobody speaks: every Latin letter of a bundle stands as a Cyrillic one. A Latin
 * letter on a page in it was not in the bundle.
 *
 * @see "ISO 639-2: qaa to qtz are for local use"
 */
public final class NoLanguage {
  public static final Locale REGION = Locale.forLanguageTag("qaa-GB");

  private static final String LATIN = "abcdefghijklmnopqrstuvwxyz";
  private static final String OTHER = "абвгдежзийклмнопрстуфхцчшщ";

  private NoLanguage() {}

  /** A text in it; placeholders hold no letters and stay. */
  public static String of(String english) {
    return english
        .chars()
        .map(NoLanguage::letter)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static int letter(int c) {
    int at = LATIN.indexOf(Character.toLowerCase(c));
    if (at < 0) {
      return c;
    }
    char other = OTHER.charAt(at);
    return Character.isUpperCase(c) ? Character.toUpperCase(other) : other;
  }
}
