package corewright.bench.identify;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number that a person read off an instrument, with its uncertainty: {@code 437}, {@code 437 g},
 * {@code 437 ± 2 g}, {@code 0.437 kg}, with either decimal mark.
 *
 * @param value in the cue's unit; NaN where the text is no such number
 * @param expanded U = 2u, in the same unit
 */
public record Quantified(double value, double expanded) {
  /** What a bench scale shows to 5 g is taken to be good to 5 g (k = 2), unless it is said. */
  private static final double SCALE_g = 5;

  private static final Pattern TEXT =
      Pattern.compile(
          "([0-9]+(?:[.,][0-9]+)?)\\s*(?:(?:±|\\+/-|\\+-)\\s*([0-9]+(?:[.,][0-9]+)?))?\\s*([a-zA-Z]*)");

  /** Reads a text; what carries another unit than {@code unit} is no number of it. */
  public static Quantified of(String text, String unit) {
    Matcher match = TEXT.matcher(text.strip());
    if (!match.matches()) {
      return new Quantified(Double.NaN, Double.NaN);
    }
    double factor = factor(match.group(3), unit);
    String stated = match.group(2);
    double expanded = stated == null ? resolution(unit) : number(stated) * factor;
    return new Quantified(number(match.group(1)) * factor, expanded);
  }

  private static double factor(String written, String unit) {
    if (written.isEmpty() || written.equals(unit)) {
      return 1;
    }
    return written.equals("k" + unit) ? 1000 : Double.NaN;
  }

  private static double resolution(String unit) {
    return unit.equals("g") ? SCALE_g : 0;
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }
}
