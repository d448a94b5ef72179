package corewright.bench.log.table;

import java.util.List;
import java.util.Optional;

/** Finds headers in the midst of a log: written again when the recording was paused. */
final class Headers {
  private Headers() {}

  /** A quick look: rows of data begin with a digit, a sign or a quoted one. */
  static boolean mayBeOne(String line) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c != ' ' && c != '"' && c != '\'' && c != '(' && c != '[') {
        return Character.isLetter(c) || c == '#';
      }
    }
    return false;
  }

  /** The names, if the line is a header: no row of data, two of its names known. */
  static Optional<List<String>> names(String line, Dialect dialect) {
    Cells cells = new Cells();
    cells.split(line, dialect.delimiter());
    if (cells.count() < 2 || DataRow.is(cells)) {
      return Optional.empty();
    }
    List<String> names = cells.texts();
    return known(names) >= 2 && !Head.areUnits(names) ? Optional.of(names) : Optional.empty();
  }

  /** How many of the names are known. */
  static long known(List<String> names) {
    return names.stream()
        .filter(n -> !n.isEmpty())
        .map(n -> Label.of(n, ""))
        .filter(Headers::known)
        .count();
  }

  private static boolean known(Label label) {
    return Vocabulary.TIME_CORE.in(label)
        || Vocabulary.SPEED.in(label)
        || Vocabulary.OUTPUT_SURE.in(label)
        || (Vocabulary.SUPPLY.in(label) && Vocabulary.VOLT.in(label))
        || Vocabulary.FRAME.in(label);
  }
}
