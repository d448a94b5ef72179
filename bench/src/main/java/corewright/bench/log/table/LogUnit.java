package corewright.bench.log.table;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A unit as an export writes it.
 *
 * @param kind what is measured in it
 * @param scale printed value times this is the value in the kind's own unit (V, s, 1/min, …)
 * @param ambiguous whether a factor stood there that some tools divide by and others multiply with
 */
record LogUnit(Kind kind, double scale, boolean ambiguous) {

  /** Kinds that matter for telling columns apart. */
  enum Kind {
    VOLT,
    SECOND,
    SPEED,
    PRESSURE,
    TEMPERATURE,
    PERCENT,
    /** A converter's own numbers: no reading without a scale. */
    COUNT,
    QUANTITY,
    OTHER
  }

  private static final Map<String, LogUnit> KNOWN = new HashMap<>();

  static {
    put(
        Kind.VOLT, 1, "v", "volt", "volts", "vdc", "vcc", "voltios", "voltow", "v dc", "вольт",
        "в");
    put(Kind.VOLT, 1e-3, "mv", "millivolt", "millivolts", "mvolt", "мв");
    put(Kind.VOLT, 0.1, "dv");
    put(Kind.VOLT, 1e3, "kv");
    put(Kind.SECOND, 1, "s", "sec", "secs", "second", "seconds", "sek", "sekunden", "seg", "segs");
    put(Kind.SECOND, 1, "segundos", "secondes", "secondi", "seconden", "sekundy", "sekunder", "с");
    put(
        Kind.SECOND,
        1e-3,
        "ms",
        "msec",
        "msek",
        "mseg",
        "millis",
        "millisec",
        "milliseconds",
        "мс");
    put(Kind.SECOND, 1e-3, "millisekunden", "milisegundos", "millisecondes", "millisecondi");
    put(Kind.SECOND, 1e-6, "us", "usec", "microseconds");
    put(Kind.SECOND, 60, "min", "minutes", "minuten");
    put(Kind.SECOND, 3600, "h", "hours");
    put(Kind.SPEED, 1, "rpm", "1/min", "u/min", "tr/min", "t/min", "giri/min", "g/min", "r/min");
    put(Kind.SPEED, 1, "obr/min", "o/min", "ot/min", "min-1", "min^-1", "/min", "tpm", "rev/min");
    put(Kind.SPEED, 1, "omw/min", "varv/min", "v/min", "rev/m", "upm", "giri", "min?1", "об/мин");
    put(Kind.SPEED, 1, "rot/min", "dev/dak", "d/dak", "kierr/min", "omdr/min");
    put(Kind.SPEED, 1000, "krpm", "rpm x1000", "x1000 rpm", "1000/min", "rpm*1000", "rpm x 1000");
    put(Kind.PRESSURE, 1, "pa", "hpa", "kpa", "mpa", "bar", "mbar", "psi", "psig", "psia", "inhg");
    put(
        Kind.PRESSURE,
        1,
        "mmhg",
        "kg/cm2",
        "kg/cm²",
        "atm",
        "cmhg",
        "in hg",
        "kpaa",
        "kpag",
        "cmh2o");
    put(
        Kind.TEMPERATURE,
        1,
        "°c",
        "°f",
        "degc",
        "degf",
        "c",
        "f",
        "deg c",
        "deg f",
        "?c",
        "?f",
        "k");
    put(Kind.TEMPERATURE, 1, "° c", "° f", "°", "oc", "of", "grad c", "celsius", "?°c", "?°f");
    put(Kind.PERCENT, 1, "%", "pct", "percent", "prozent");
    put(Kind.COUNT, 1, "count", "counts", "cts", "cnt", "raw", "adc", "digit", "digits", "dig");
    put(Kind.COUNT, 1, "lsb", "bit", "bits", "inc", "ink", "hex", "#", "adu", "steps", "punkte");
    put(Kind.QUANTITY, 1, "mg/str", "mg/stroke", "mg/hub", "mg/stk", "mg/st", "mg/cp", "mg/coup");
    put(Kind.QUANTITY, 1, "mg/cyl", "mg/inj", "mg/i", "mg/r", "mg/takt", "mg/slag", "mg/cor", "mg");
    put(Kind.QUANTITY, 1, "mm3/st", "mm3/str", "mm³/st", "mm3", "mm³", "mm3/hub", "mm3/inj");
    put(
        Kind.QUANTITY,
        1,
        "l/h",
        "g/s",
        "gal/h",
        "gph",
        "lph",
        "kg/h",
        "ul",
        "mm3/stroke",
        "mg/skok");
    put(Kind.OTHER, 1, "a", "ma", "amp", "amps", "hz", "khz", "km/h", "kmh", "kph", "mph", "nm");
    put(
        Kind.OTHER,
        1,
        "kw",
        "w",
        "hp",
        "ohm",
        "g",
        "m",
        "km",
        "mi",
        "ft",
        "l",
        "deg",
        "°ca",
        "°kw");
    put(
        Kind.OTHER,
        1,
        "lambda",
        "l/100km",
        "mpg",
        "ca",
        "ps",
        "kg",
        "j",
        "mj",
        "cv",
        "°cs",
        "mph/s");
  }

  private static final Pattern FACTOR_FIRST =
      Pattern.compile("[x*×]? ?(\\d+(?:[.,]\\d+)?) ?[x*×]? ?(\\D.*)");
  private static final Pattern FACTOR_LAST =
      Pattern.compile("(\\D*?[a-z%°]) ?([x*×/]) ?(\\d+(?:[.,]\\d+)?)");

  private static void put(Kind kind, double scale, String... names) {
    for (String name : names) {
      KNOWN.put(name, new LogUnit(kind, scale, false));
    }
  }

  /** The unit that {@code text} writes, brackets or not; empty if it is none. */
  static Optional<LogUnit> of(String text) {
    String bare = bare(text);
    if (bare.isEmpty() || bare.length() > 16) {
      return Optional.empty();
    }
    Optional<LogUnit> plain = known(text.strip(), bare);
    return plain.isPresent() ? plain : scaled(bare);
  }

  /** A value of {@code printed} in this unit, in the kind's own. */
  double value(double printed) {
    return printed * scale;
  }

  private static String bare(String text) {
    String bare = Folded.of(text);
    while (bare.length() > 1 && "([{<\"'".indexOf(bare.charAt(0)) >= 0) {
      bare = bare.substring(1, bare.length() - 1).strip();
    }
    return bare.startsWith("in ") && bare.length() > 4 ? bare.substring(3) : bare;
  }

  /**
   * Capital letters decide where lower case would mix two up: MV is not a millivolt's sign here.
   */
  private static Optional<LogUnit> known(String original, String bare) {
    LogUnit unit = KNOWN.get(bare);
    boolean hours = bare.equals("h") && original.toUpperCase(Locale.ROOT).equals(original);
    return hours ? Optional.empty() : Optional.ofNullable(unit);
  }

  private static Optional<LogUnit> scaled(String bare) {
    Matcher first = FACTOR_FIRST.matcher(bare);
    if (first.matches()) {
      LogUnit unit = KNOWN.get(first.group(2).strip());
      double factor = number(first.group(1));
      boolean times = bare.indexOf('x') >= 0 || bare.indexOf('*') >= 0 || bare.indexOf('×') >= 0;
      // 0.1 V is a step; 48 V belongs to the name.
      if (unit != null && factor > 0 && (times || factor < 1)) {
        return Optional.of(new LogUnit(unit.kind, unit.scale * factor, true));
      }
    }
    Matcher last = FACTOR_LAST.matcher(bare);
    if (last.matches()) {
      LogUnit unit = KNOWN.get(last.group(1).strip());
      double factor = number(last.group(3));
      if (unit != null && factor > 0) {
        return Optional.of(new LogUnit(unit.kind, unit.scale * factor, true));
      }
    }
    return Optional.empty();
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(',', '.'));
  }
}
