package corewright.bench.capture.csv;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a person says of a text record, against what its headings seem to say: which column is
 * which, in what unit, and how fast it was sampled.
 *
 * @param columns by role ({@value #ROLES}): the number of a column, from 1 on, or its heading
 * @param units by role: as in headings, for example mV
 * @param rate_Hz of the samples; a column of time is then not read
 */
public record Overrides(
    Map<String, String> columns, Map<String, String> units, Optional<Double> rate_Hz) {
  static final String ROLES = "time, output, load, input, inputCurrent";

  public static final Overrides NONE = new Overrides(Map.of(), Map.of(), Optional.empty());

  private static final Map<String, Role> BY_WORD =
      Map.of(
          "time", Role.TIME,
          "output", Role.OUTPUT,
          "load", Role.LOAD,
          "input", Role.FEED,
          "inputCurrent", Role.INPUT_CURRENT);

  /**
   * @throws IllegalArgumentException if a role is not known or a unit is not one of its
   */
  public Overrides {
    columns = Map.copyOf(columns);
    units = Map.copyOf(units);
    for (Map<String, String> given : List.of(columns, units)) {
      for (String word : given.keySet()) {
        if (!BY_WORD.containsKey(word)) {
          throw new IllegalArgumentException("'" + word + "' is none of " + ROLES);
        }
      }
    }
    units.forEach(Overrides::requireUnit);
    if (rate_Hz.filter(rate -> !(rate > 0) || rate.isInfinite()).isPresent()) {
      throw new IllegalArgumentException("the sample rate is not above 0: " + rate_Hz.get());
    }
  }

  private static void requireUnit(String word, String unit) {
    if (ColumnName.unitAlone(unit)
        .flatMap(ColumnName::unit)
        .filter(role(word).unit()::equals)
        .isEmpty()) {
      throw new IllegalArgumentException(
          "'" + unit + "' is no unit of " + word + ", which is in " + role(word).unit().symbol());
    }
  }

  private static Role role(String word) {
    return BY_WORD.getOrDefault(word, Role.TIME);
  }

  boolean namesColumns() {
    return !columns.isEmpty();
  }

  /**
   * The headings as if they had said so: each column that is named gets a heading of its role, and
   * others lose theirs where they would claim the same role.
   *
   * @param guesses what was done is added here
   */
  List<String> applied(String file, int line, List<String> headings, List<String> guesses) {
    List<String> said = new ArrayList<>(headings);
    Map<String, Integer> chosen = new LinkedHashMap<>();
    columns.forEach((word, which) -> chosen.put(word, index(file, line, headings, which)));
    units.keySet().stream()
        .filter(word -> !chosen.containsKey(word))
        .forEach(word -> chosen.put(word, claimant(file, line, headings, word)));
    for (int i = 0; i < said.size(); i++) {
      Optional<Role> claims = claim(headings.get(i));
      boolean taken =
          claims.isPresent()
              && (chosen.containsValue(i)
                  || columns.keySet().stream().anyMatch(w -> role(w) == claims.get())
                  || (rate_Hz.isPresent() && claims.get() == Role.TIME));
      said.set(i, taken ? "" : said.get(i));
    }
    chosen.forEach(
        (word, i) -> {
          said.set(i, heading(word, headings.get(i)));
          guesses.add("Column " + (i + 1) + " is taken for the " + word + ", as was asked.");
        });
    rate_Hz.ifPresent(rate -> guesses.add("The sample rate is " + rate + " Hz, as was asked."));
    return List.copyOf(said);
  }

  private String heading(String word, String was) {
    String name = word.equals("inputCurrent") ? "input current" : word;
    Optional<String> unit = Optional.ofNullable(units.get(word));
    if (unit.isPresent()) {
      return name + " [" + unit.get() + "]";
    }
    ColumnName parsed = ColumnName.of(was);
    return parsed.unit().filter(role(word).unit()::equals).isPresent()
        ? name + was.strip().substring(Math.min(was.strip().length(), parsed.name().length()))
        : name;
  }

  private static Optional<Role> claim(String heading) {
    ColumnName parsed = ColumnName.of(heading);
    return Role.of(parsed.name(), parsed.unit());
  }

  private static int claimant(String file, int line, List<String> headings, String word) {
    for (int i = 0; i < headings.size(); i++) {
      if (claim(headings.get(i)).filter(r -> r == role(word)).isPresent()) {
        return i;
      }
    }
    throw Layout.bad(
        file, line, "header", "no column is read as " + word + ": name it with --column as well");
  }

  private static int index(String file, int line, List<String> headings, String which) {
    for (int i = 0; i < headings.size(); i++) {
      if (headings.get(i).strip().equalsIgnoreCase(which.strip())) {
        return i;
      }
    }
    if (which.matches("[0-9]{1,4}")) {
      int number = Integer.parseInt(which);
      if (number >= 1 && number <= headings.size()) {
        return number - 1;
      }
    }
    throw Layout.bad(
        file,
        line,
        "header",
        "there is no column '" + which + "' among " + headings.size() + ": " + headings);
  }
}
