package corewright.bench.capture.csv;

import corewright.measures.Unit;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's heading taken apart, as {@code output_V}, {@code Vin [mV]}, {@code Time (ms)}.
 *
 * @param name what is left without the unit
 * @param unit empty where the heading gives none
 * @param decimals power of ten that the written unit is smaller by: 3 for mV
 */
record ColumnName(String name, Optional<Unit> unit, int decimals) {
  private static final Pattern IN_BRACKETS =
      Pattern.compile("(.*?)\\s*[\\[(]\\s*(\\S+?)\\s*[\\])]");
  private static final Pattern AT_END = Pattern.compile("(.*?)[_ /]+([a-zA-Zµμ]+)");

  private static final Pattern AFTER_LINE = Pattern.compile("(.*?)_([a-zA-Zµμ]+)");

  private record Written(Unit unit, int decimals) {}

  private static final Map<String, Written> UNITS =
      Map.ofEntries(
          Map.entry("s", new Written(Unit.SECOND, 0)),
          Map.entry("sec", new Written(Unit.SECOND, 0)),
          Map.entry("seconds", new Written(Unit.SECOND, 0)),
          Map.entry("ms", new Written(Unit.SECOND, 3)),
          Map.entry("us", new Written(Unit.SECOND, 6)),
          Map.entry("µs", new Written(Unit.SECOND, 6)),
          Map.entry("ns", new Written(Unit.SECOND, 9)),
          Map.entry("V", new Written(Unit.VOLT, 0)),
          Map.entry("Volt", new Written(Unit.VOLT, 0)),
          Map.entry("Volts", new Written(Unit.VOLT, 0)),
          Map.entry("mV", new Written(Unit.VOLT, 3)),
          Map.entry("kV", new Written(Unit.VOLT, -3)),
          Map.entry("A", new Written(Unit.AMPERE, 0)),
          Map.entry("Amp", new Written(Unit.AMPERE, 0)),
          Map.entry("Amps", new Written(Unit.AMPERE, 0)),
          Map.entry("mA", new Written(Unit.AMPERE, 3)),
          Map.entry("°C", new Written(Unit.CELSIUS, 0)),
          Map.entry("C", new Written(Unit.CELSIUS, 0)),
          Map.entry("W", new Written(Unit.WATT, 0)));

  static ColumnName of(String heading) {
    String text = heading.strip().replace('μ', 'µ');
    if (text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"")) {
      text = text.substring(1, text.length() - 1).strip();
    }
    for (Pattern pattern : new Pattern[] {IN_BRACKETS, AT_END}) {
      Matcher matcher = pattern.matcher(text);
      if (matcher.matches() && UNITS.containsKey(matcher.group(2))) {
        return named(matcher.group(1), matcher.group(2));
      }
    }
    // In the wrong case a unit counts only where nothing else can be meant: no "phase a" is 1 A.
    for (Pattern pattern : new Pattern[] {IN_BRACKETS, AFTER_LINE}) {
      Matcher matcher = pattern.matcher(text);
      Optional<String> unit = matcher.matches() ? anyCase(matcher.group(2)) : Optional.empty();
      if (unit.isPresent()) {
        return named(matcher.group(1), unit.get());
      }
    }
    return new ColumnName(text, Optional.empty(), 0);
  }

  private static Optional<String> anyCase(String written) {
    return UNITS.keySet().stream().filter(u -> u.equalsIgnoreCase(written)).findFirst();
  }

  private static ColumnName named(String name, String unit) {
    Written written = UNITS.getOrDefault(unit, new Written(Unit.ONE, 0));
    return new ColumnName(name.strip(), Optional.of(written.unit()), written.decimals());
  }

  /** Whether a text is nothing but a unit, as in a row of units under the headings. */
  static Optional<ColumnName> unitAlone(String text) {
    String bare = text.strip().replaceAll("^[\\[(\"]+|[\\])\"]+$", "").replace('μ', 'µ');
    return UNITS.containsKey(bare) ? Optional.of(named("", bare)) : Optional.empty();
  }
}
