package corewright.bench.log.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person said instead of letting it be guessed.
 *
 * @param delimiter between cells
 * @param decimal {@code .} or {@code ,}
 * @param rate_Hz rows or frames a second, for a log without usable time
 * @param columns by role: the column's number, counted from 1, or its name; {@code none} for a role
 *     that no column has
 * @param units by role: a unit, or a factor and a unit as {@code 0.0489 V}
 */
public record Choices(
    Optional<Character> delimiter,
    Optional<Character> decimal,
    OptionalDouble rate_Hz,
    Map<Role, List<String>> columns,
    Map<Role, String> units) {

  public Choices {
    columns = Map.copyOf(columns);
    units = Map.copyOf(units);
  }

  /** Everything is guessed. */
  public static Choices none() {
    return new Choices(
        Optional.empty(), Optional.empty(), OptionalDouble.empty(), Map.of(), Map.of());
  }
}
