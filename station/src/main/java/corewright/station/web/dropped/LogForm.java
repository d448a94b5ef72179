package corewright.station.web.dropped;

import corewright.bench.log.Window;
import corewright.bench.log.table.Choices;
import corewright.bench.log.table.Role;
import corewright.station.work.Refused;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What a person corrected of a log's guesses, from the fields of the form. */
final class LogForm {
  static final List<Role> CHOICES =
      List.of(Role.TIME, Role.SUPPLY, Role.OUTPUT, Role.SPEED, Role.FUEL, Role.SYNC, Role.NONE);
  private static final int MOST_COLUMNS = 400;

  private final Function<String, String> field;

  /**
   * @param field the value of a field; empty where it was not given
   */
  LogForm(Function<String, String> field) {
    this.field = field;
  }

  Choices choices() {
    return new Choices(
        sign("delimiter"),
        sign("decimal"),
        number("rate").map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        columns(),
        units());
  }

  Optional<Window> window() {
    Optional<Double> from = number("from");
    Optional<Double> to = number("to");
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (to.get() <= from.get()) {
      throw new Refused("The judged time ends before it begins", "Give two times in s.");
    }
    return Optional.of(new Window(from.get(), to.get()));
  }

  /**
   * A role is told anew as soon as one column of it was changed: its columns are then those that
   * stand so in the form, or none.
   */
  private Map<Role, List<String>> columns() {
    Map<Role, List<String>> said = new EnumMap<>(Role.class);
    Map<Role, List<String>> all = new EnumMap<>(Role.class);
    for (int i = 1; i <= MOST_COLUMNS && !field.apply("c" + i).isEmpty(); i++) {
      Role now = role("c" + i);
      Role guessed = role("g" + i);
      all.computeIfAbsent(now, r -> new ArrayList<>()).add(String.valueOf(i));
      if (now != guessed) {
        said.put(now, List.of());
        said.put(guessed, List.of());
      }
    }
    said.remove(Role.NONE);
    said.replaceAll((role, none) -> all.getOrDefault(role, List.of("none")));
    return said;
  }

  private Map<Role, String> units() {
    Map<Role, String> units = new EnumMap<>(Role.class);
    for (Role role : List.of(Role.SUPPLY, Role.OUTPUT)) {
      String unit = field.apply("unit-" + role.name());
      if (!unit.isBlank()) {
        units.put(role, unit.strip());
      }
    }
    return units;
  }

  private Role role(String name) {
    String given = field.apply(name);
    return CHOICES.stream().filter(r -> r.name().equals(given)).findFirst().orElse(Role.NONE);
  }

  private Optional<Character> sign(String name) {
    String given = field.apply(name);
    return given.equals("tab")
        ? Optional.of('\t')
        : given.length() == 1 ? Optional.of(given.charAt(0)) : Optional.empty();
  }

  private Optional<Double> number(String name) {
    return Numbers.of(field.apply(name), name);
  }
}
