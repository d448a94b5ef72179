package corewright.bench.log.table;

import corewright.files.BadFile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which delimiter and which decimal mark: each pair is tried on the head of the file, and the one
 * under which most rows have the same length, most cells are numbers and some column only rises is
 * taken.
 */
final class DialectVote {
  private static final char[] DELIMITERS = {';', '\t', ',', '|', Cells.SPACES};

  /** Readings closer than this share are told apart by a person. */
  private static final double CLOSE = 0.05;

  private final String name;
  private final List<String> lines;
  private final Choices choices;

  /**
   * Prepares the vote.
   *
   * @param lines the head of the file, tidied, first line first
   */
  DialectVote(String name, List<String> lines, Choices choices) {
    this.name = name;
    this.lines = lines;
    this.choices = choices;
  }

  private record Vote(Dialect dialect, double score, double numbers) {}

  Dialect winner() {
    List<Vote> votes = new ArrayList<>();
    Optional<Character> fixed = choices.delimiter().or(this::declared);
    for (char delimiter : DELIMITERS) {
      if (fixed.isEmpty() || fixed.get() == delimiter) {
        votes.addAll(votes(delimiter));
      }
    }
    if (votes.isEmpty() && fixed.isPresent()) {
      votes.addAll(votes(fixed.get()));
    }
    if (votes.isEmpty() && choices.delimiter().isEmpty() && fixed.isPresent()) {
      for (char delimiter : DELIMITERS) { // the file's own declaration fits none of its rows
        votes.addAll(votes(delimiter));
      }
    }
    votes.sort(Comparator.comparingDouble(Vote::score).reversed());
    if (votes.isEmpty()) {
      throw noTable();
    }
    Vote best = votes.get(0);
    votes.stream()
        .skip(1)
        .filter(v -> v.score > best.score * (1 - CLOSE) && v.numbers > 0)
        .filter(v -> differs(best.dialect, v.dialect))
        .findFirst()
        .ifPresent(
            v -> {
              throw ask(best.dialect, v.dialect);
            });
    return best.dialect;
  }

  /** The delimiter of a first line {@code sep=;}. */
  private Optional<Character> declared() {
    for (String line : lines.subList(0, Math.min(3, lines.size()))) {
      String bare = line.replace("\"", "").strip().toLowerCase(java.util.Locale.ROOT);
      if (bare.startsWith("sep=")) {
        String given = line.replace("\"", "").strip().substring(4);
        return Optional.of(given.isEmpty() || given.equals("\\t") ? '\t' : given.charAt(0));
      }
    }
    return Optional.empty();
  }

  private List<Vote> votes(char delimiter) {
    List<List<String>> rows = rowsOfModalLength(delimiter);
    List<Vote> votes = new ArrayList<>();
    if (rows.isEmpty()) {
      return votes;
    }
    long filled = lines.stream().filter(l -> !l.isBlank()).count();
    double regular = rows.size() / (double) filled;
    for (char decimal : new char[] {'.', ','}) {
      if (choices.decimal().isEmpty() || choices.decimal().get() == decimal) {
        double numbers = numberShare(rows, decimal);
        double score = regular * numbers * (0.5 + 0.5 * bestRise(rows, decimal));
        int columns = rows.get(0).size();
        votes.add(
            new Vote(new Dialect(delimiter, decimal, columns, Optional.empty()), score, numbers));
      }
    }
    return votes;
  }

  private List<List<String>> rowsOfModalLength(char delimiter) {
    Map<Integer, List<List<String>>> byLength = new TreeMap<>(Comparator.reverseOrder());
    Cells cells = new Cells();
    for (String line : lines) {
      if (DataRow.is(cells.split(line, delimiter))) {
        byLength.computeIfAbsent(cells.count(), n -> new ArrayList<>()).add(cells.texts());
      }
    }
    return byLength.values().stream().max(Comparator.comparingInt(List::size)).orElse(List.of());
  }

  private static double numberShare(List<List<String>> rows, char decimal) {
    double sum = 0;
    int filled = 0;
    for (List<String> row : rows) {
      for (String cell : row) {
        if (!cell.isEmpty()) {
          filled++;
          boolean clock = ClockCell.of(cell).form() != ClockCell.Form.NONE;
          sum += clock ? 1 : NumberCell.credit(cell, decimal);
        }
      }
    }
    return filled == 0 ? 0 : sum / filled;
  }

  /** The largest share of steps upward or level that a column has which really moves. */
  private static double bestRise(List<List<String>> rows, char decimal) {
    double best = 0;
    for (int c = 0; c < Math.min(rows.get(0).size(), 24); c++) {
      double[] values = new double[rows.size()];
      for (int r = 0; r < rows.size(); r++) {
        ClockCell clock = ClockCell.of(rows.get(r).get(c));
        values[r] =
            clock.form() == ClockCell.Form.NONE
                ? NumberCell.value(rows.get(r).get(c), decimal)
                : clock.seconds();
      }
      best = Math.max(best, Rise.of(values).share());
    }
    return best;
  }

  /** Two delimiters that cut the same cells, tabs set between spaces say, leave nothing to ask. */
  private boolean differs(Dialect a, Dialect b) {
    return a.delimiter() != b.delimiter()
        && lines.stream()
            .anyMatch(
                line ->
                    !new Cells()
                        .split(line, a.delimiter())
                        .texts()
                        .equals(new Cells().split(line, b.delimiter()).texts()));
  }

  private BadFile ask(Dialect one, Dialect other) {
    return Unreadable.at(
        name,
        1,
        1,
        "the rows can be cut in two ways: "
            + one.words()
            + " ("
            + one.columns()
            + " columns), or "
            + other.words()
            + " ("
            + other.columns()
            + " columns)",
        "Say which one with --delimiter");
  }

  private BadFile noTable() {
    return Unreadable.at(
        name,
        1,
        1,
        "there are no rows of numbers in it, under any delimiter",
        "Export the recording again as CSV; a picture or a report cannot be read");
  }
}
