package corewright.station.cli;

import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.station.work.Refused;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A resistance with its U, as people write it. */
final class OhmText {
  private static final Pattern FORM =
      Pattern.compile("\\s*([0-9.]+)\\s*(?:±|\\+-|\\+/-)\\s*([0-9.]+)\\s*(%?)\\s*(?:Ω|ohm)?\\s*");

  private OhmText() {}

  /**
   * {@code 10±0.1} or {@code 10±1%}, U of k = 2, decimal comma too.
   *
   * @throws Refused if it cannot be read
   */
  static Measurement read(String typed) {
    Matcher form = FORM.matcher(typed.replace(',', '.'));
    try {
      if (form.matches()) {
        double ohm = Double.parseDouble(form.group(1));
        double half = Double.parseDouble(form.group(2));
        return new Measurement(
            ohm, (form.group(3).isEmpty() ? half : ohm * half / 100) / 2, Unit.OHM);
      }
    } catch (NumberFormatException none) {
      // said below
    }
    throw new Refused("'" + typed + "' is no resistor", "Write it as 10±0.1 or 10±1%.");
  }
}
