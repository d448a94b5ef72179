package corewright.bench.capture.csv;

import corewright.measures.Unit;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a column of a record can be, and the words by which its name says so. */
enum Role {
  TIME(
      Unit.SECOND,
      "time|t|zeit|temps|tiempo|tempo|seconds?|sec|timestamp|elapsed( time)?|x|x ?axis"),
  OUTPUT(
      Unit.VOLT,
      ".*\\b(output|out|vout|v out|uout|u"
          + " out|boost|vboost|load|ausgang|ausgangsspannung|sortie|salida|uscita)\\b.*"),
  LOAD(
      Unit.AMPERE,
      ".*\\b(load|iload|i load|out|output|iout|i out|laststrom|ausgang|ausgangsstrom|sortie|carga"
          + "|salida|carico|uscita)\\b.*|last|(courant (de )?)?charge"),
  INPUT_CURRENT(
      Unit.AMPERE,
      ".*\\b(input|in|iin|i in|supply|battery|batt|source|eingang|eingangsstrom|entree|entrada"
          + "|ingresso)\\b.*"),
  FEED(
      Unit.VOLT,
      ".*\\b(input|in|vin|v in|uin|u in|supply|battery|batt|vbat|feed|line|eingang|eingangsspannung"
          + "|batterie|versorgung|entree|alimentation|entrada|bateria|ingresso|batteria)\\d*\\b.*");

  private final Unit unit;
  private final Pattern words;

  Role(Unit unit, String words) {
    this.unit = unit;
    this.words = Pattern.compile(words);
  }

  Unit unit() {
    return unit;
  }

  /**
   * The role of a column.
   *
   * @param name without its unit
   * @param unit as the name gives it; empty where it gives none: then only words that name voltage
   *     or current by themselves decide
   */
  static Optional<Role> of(String name, Optional<Unit> unit) {
    String plain = plain(name);
    if (unit.isEmpty()) {
      return withoutUnit(plain);
    }
    for (Role role : values()) {
      if (role.unit == unit.get() && role.words.matcher(plain).matches()) {
        return Optional.of(role);
      }
    }
    return Optional.empty();
  }

  /** Small letters and digits, words apart, accents left out: {@code inputCurrent} is two words. */
  private static String plain(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .replaceAll("([a-z])([A-Z])", "$1 $2")
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9]+", " ")
        .strip();
  }

  private static Optional<Role> withoutUnit(String plain) {
    if (TIME.words.matcher(plain).matches()) {
      return Optional.of(TIME);
    }
    if (plain.matches(".*\\b(i ?(load|out)|load current|output current|load)\\b.*")) {
      return Optional.of(LOAD);
    }
    if (plain.matches(".*\\b(i ?in|(input|supply) current)\\b.*")) {
      return Optional.of(INPUT_CURRENT);
    }
    if (plain.matches(".*\\b([uv] ?out|v ?boost|output( voltage)?|boost)\\b.*")) {
      return Optional.of(OUTPUT);
    }
    return plain.matches(
            ".*\\b([uv] ?in|v ?bat|input( voltage)?|supply( voltage)?|battery)\\d*\\b.*")
        ? Optional.of(FEED)
        : Optional.empty();
  }
}
