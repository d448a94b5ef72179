package corewright.bench.capture.csv;

import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.measures.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How a text record is laid out, found from its first lines.
 *
 * @param delimiter between fields
 * @param point decimal point or comma
 * @param firstLine number of the first line with values, counted from 1
 * @param columns what each field is, in the file's order; empty for fields that are not used
 * @param rate_Hz sample rate that was given, where time is not read
 * @param guesses what was taken for granted, each a sentence; empty for the plain header
 */
record Layout(
    char delimiter,
    char point,
    int firstLine,
    List<Optional<Column>> columns,
    Optional<Double> rate_Hz,
    List<String> guesses) {
  static final String PLAIN = "time_s,input_V,output_V,load_A";

  /**
   * A field that is used.
   *
   * @param heading as written
   * @param decimals power of ten that its unit is smaller by
   */
  record Column(String heading, String name, Role role, int decimals) {}

  private static final Pattern NUMBER =
      Pattern.compile("\\s*[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d+)?\\s*");

  /**
   * Finds the layout.
   *
   * @param lines the first lines, complete, without their ends
   * @throws BadFile if there is no header, or a column is missing or named twice
   */
  static Layout of(String file, List<String> lines) {
    return of(file, lines, Overrides.NONE);
  }

  /**
   * The same with what a person says of it.
   *
   * @param overrides win over the headings
   */
  static Layout of(String file, List<String> lines, Overrides overrides) {
    int first = 0;
    while (first < lines.size() && !isData(lines.get(first))) {
      first++;
    }
    if (first == lines.size()) {
      throw bad(file, 1, "header", "no line of numbers in the first " + lines.size() + " lines");
    }
    char delimiter = delimiter(lines.get(first));
    char point = delimiter != ',' && lines.get(first).indexOf(',') >= 0 ? ',' : '.';
    int count = fields(lines.get(first), delimiter).size();
    int header = first - 1;
    List<Optional<ColumnName>> units = List.of();
    if (header > 0 && isUnits(fields(lines.get(header), delimiter))) {
      units = fields(lines.get(header), delimiter).stream().map(ColumnName::unitAlone).toList();
      header--;
    }
    if (header < 0 && overrides.namesColumns()) {
      return new Assignment(file, 1, Collections.nCopies(count, ""), units, overrides)
          .layout(delimiter, point, first + 1);
    }
    if (header < 0) {
      throw bad(file, 1, "header", "the file begins with numbers: which column is which?");
    }
    List<String> headings = fields(lines.get(header), delimiter);
    if (headings.size() != count) {
      throw bad(
          file,
          first + 1,
          "header",
          count + " values under " + headings.size() + " headings in line " + (header + 1));
    }
    return new Assignment(file, header + 1, headings, units, overrides)
        .layout(delimiter, point, first + 1);
  }

  private static boolean isData(String line) {
    return !line.isBlank()
        && fields(line, delimiter(line)).stream()
            .allMatch(f -> f.isBlank() || NUMBER.matcher(f).matches())
        && fields(line, delimiter(line)).size() > 1;
  }

  private static boolean isUnits(List<String> fields) {
    return fields.stream().anyMatch(f -> !f.isBlank())
        && fields.stream().allMatch(f -> f.isBlank() || ColumnName.unitAlone(f).isPresent());
  }

  private static char delimiter(String line) {
    return line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
  }

  static List<String> fields(String line, char delimiter) {
    return List.of(line.split(Pattern.quote(String.valueOf(delimiter)), -1));
  }

  static BadFile bad(String file, int line, String where, String message) {
    return new BadFile(
        List.of(
            new Mistake(
                file,
                line,
                where,
                message,
                "Give the record a header line such as " + PLAIN + " above its values.")));
  }

  /** Roles given to headings. */
  private record Assignment(
      String file,
      int line,
      List<String> headings,
      List<Optional<ColumnName>> units,
      Overrides overrides) {

    Layout layout(char delimiter, char point, int firstLine) {
      List<Optional<Column>> columns = new ArrayList<>();
      List<String> guesses = new ArrayList<>();
      if (point == ',') {
        guesses.add("Numbers are read with a decimal comma.");
      }
      List<String> said = overrides.applied(file, line, headings, guesses);
      for (int i = 0; i < headings.size(); i++) {
        columns.add(column(i, said.get(i), guesses));
      }
      if (String.join(",", said).strip().equals(PLAIN)) {
        guesses.clear();
      }
      if (overrides.rate_Hz().isEmpty()) {
        one(columns, Role.TIME);
      }
      one(columns, Role.OUTPUT);
      atMostOne(columns, Role.LOAD);
      atMostOne(columns, Role.INPUT_CURRENT);
      if (count(columns, Role.FEED) == 0) {
        throw bad(file, line, "header", "no column is called input, in V");
      }
      return new Layout(
          delimiter,
          point,
          firstLine,
          List.copyOf(columns),
          overrides.rate_Hz(),
          List.copyOf(guesses));
    }

    private Optional<Column> column(int i, String said, List<String> guesses) {
      ColumnName parsed = ColumnName.of(said);
      if (parsed.unit().isEmpty() && i < units.size() && units.get(i).isPresent()) {
        ColumnName unit = units.get(i).get();
        parsed = new ColumnName(parsed.name(), unit.unit(), unit.decimals());
      }
      Optional<Role> role = Role.of(parsed.name(), parsed.unit());
      String heading = said.strip();
      if (role.isEmpty()) {
        if (!heading.isEmpty()) {
          guesses.add("Column " + (i + 1) + ", '" + heading + "', is not used.");
        }
        return Optional.empty();
      }
      Unit unit = role.get().unit();
      String written =
          parsed.decimals() == 3
              ? "m" + unit.symbol()
              : parsed.decimals() == 0
                  ? unit.symbol()
                  : "10^" + -parsed.decimals() + " " + unit.symbol();
      guesses.add(
          "Column "
              + (i + 1)
              + ", '"
              + heading
              + "', is read as "
              + word(role.get())
              + " in "
              + written
              + (parsed.unit().isEmpty() ? ", since it names no unit." : "."));
      return Optional.of(new Column(heading, parsed.name(), role.get(), parsed.decimals()));
    }

    private static String word(Role role) {
      return switch (role) {
        case TIME -> "time";
        case OUTPUT -> "output";
        case LOAD -> "load";
        case INPUT_CURRENT -> "input current";
        case FEED -> "input";
      };
    }

    private void one(List<Optional<Column>> columns, Role role) {
      if (count(columns, role) == 0) {
        throw bad(
            file,
            line,
            "header",
            "no column is called " + word(role) + ", in " + role.unit().symbol());
      }
      atMostOne(columns, role);
    }

    private void atMostOne(List<Optional<Column>> columns, Role role) {
      if (count(columns, role) > 1) {
        String names =
            String.join(
                ", ",
                columns.stream()
                    .flatMap(Optional::stream)
                    .filter(c -> c.role() == role)
                    .map(c -> "'" + c.heading() + "'")
                    .toList());
        throw bad(
            file, line, "header", "several columns could be the " + word(role) + ": " + names);
      }
    }

    private static long count(List<Optional<Column>> columns, Role role) {
      return columns.stream().flatMap(Optional::stream).filter(c -> c.role() == role).count();
    }
  }
}
