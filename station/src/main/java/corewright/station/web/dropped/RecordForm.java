package corewright.station.web.dropped;

import corewright.bench.capture.csv.Overrides;
import corewright.station.work.MeasureFile;
import corewright.station.work.Refused;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What a person corrected of a record's guesses, from the fields of the form. */
final class RecordForm {
  static final List<String> ROLES = List.of("time", "output", "load", "input", "inputCurrent");

  private final Function<String, String> field;

  RecordForm(Function<String, String> field) {
    this.field = field;
  }

  MeasureFile.Request request(Path file) {
    return new MeasureFile.Request(
        file,
        Optional.of(field.apply("family")).filter(f -> !f.isBlank()),
        Optional.empty(),
        above0("nominal"),
        Optional.empty(),
        Optional.empty(),
        new MeasureFile.Known(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            overrides()));
  }

  private Overrides overrides() {
    Map<String, String> columns = new LinkedHashMap<>();
    Map<String, String> units = new LinkedHashMap<>();
    for (String role : ROLES) {
      put(columns, role, field.apply("column-" + role));
      put(units, role, field.apply("unit-" + role));
    }
    try {
      return new Overrides(columns, units, above0("rate"));
    } catch (IllegalArgumentException wrong) {
      throw new Refused(
          String.valueOf(wrong.getMessage()), "Mend the column or unit, and read it again.");
    }
  }

  private static void put(Map<String, String> into, String role, String given) {
    if (!given.isBlank()) {
      into.put(role, given.strip());
    }
  }

  private Optional<Double> above0(String name) {
    Optional<Double> value = Numbers.of(field.apply(name), name);
    if (value.filter(v -> v <= 0).isPresent()) {
      throw new Refused("'" + name + "' is not above 0", "Give a number above 0, or leave it.");
    }
    return value;
  }
}
