package corewright.bench.life;

import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What looks like the identification number of a vehicle: 17 letters and digits without I, O and Q,
 * the last four digits; or a check digit in the ninth place that fits. Whoever can link it to a
 * person holds that person's data.
 *
 * @see "ISO 3779:2009, 4 and 5; 49 CFR 565.15(c) for the check digit"
 */
public final class VehicleNumbers {
  /** What stands in its place. */
  public static final String LEFT_OUT = "(vehicle number left out)";

  private static final String CHARACTER = "[A-HJ-NPR-Z0-9]";
  private static final Pattern ALONE =
      Pattern.compile("(?<![A-Z0-9])" + CHARACTER + "{17}(?![A-Z0-9])", Pattern.CASE_INSENSITIVE);

  /** Written in groups it is told by what stands before it. */
  private static final Pattern NAMED =
      Pattern.compile(
          "\\b(?:vin|fin|chassis|fahrgestell|frame|vehicle)[-a-z .]{0,24}[:=#]?\\s*("
              + CHARACTER
              + "(?:[ -]?"
              + CHARACTER
              + "){16})(?![A-Z0-9])",
          Pattern.CASE_INSENSITIVE);

  private static final String VALUES = "0123456789.ABCDEFGH..JKLMN.P.R..STUVWXYZ";
  private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
  private static final int CHECK = 8;

  private VehicleNumbers() {}

  /** Whether a text holds one. */
  public static boolean in(String text) {
    return !without(text).equals(text);
  }

  /** The text with each of them left out. */
  public static String without(String text) {
    return without(text, number -> false);
  }

  /**
   * The text with each of them left out.
   *
   * @param other what only looks like one, as the serial that stands on a unit
   */
  public static String without(String text, Predicate<String> other) {
    if (text.length() < WEIGHTS.length) {
      return text;
    }
    String alone = ALONE.matcher(text).replaceAll(found -> replacement(found, other));
    Matcher named = NAMED.matcher(alone);
    StringBuilder without = new StringBuilder();
    int from = 0;
    while (named.find()) {
      if (isOne(named.group(1).replaceAll("[ -]", ""))) {
        without.append(alone, from, named.start(1)).append(LEFT_OUT);
        from = named.end(1);
      }
    }
    return without.append(alone.substring(from)).toString();
  }

  private static String replacement(MatchResult found, Predicate<String> other) {
    return isOne(found.group()) && !other.test(found.group())
        ? Matcher.quoteReplacement(LEFT_OUT)
        : found.group();
  }

  private static boolean isOne(String characters) {
    String number = characters.toUpperCase(Locale.ROOT);
    if (number.matches("[0-9]+(E[0-9]*)?")) {
      return false; // the decimals of a number, as 5777218104420236E-30
    }
    return number.substring(13).chars().allMatch(Character::isDigit) || fits(number);
  }

  /** Each character's value by its place in the alphabet, weighted; the sum modulo 11, X for 10. */
  private static boolean fits(String number) {
    int sum = 0;
    for (int i = 0; i < WEIGHTS.length; i++) {
      sum += WEIGHTS[i] * value(number.charAt(i));
    }
    return number.charAt(CHECK) == "0123456789X".charAt(sum % 11);
  }

  private static int value(char c) {
    return VALUES.indexOf(c) % 10;
  }
}
