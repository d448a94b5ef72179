package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Names, units and the first row of data, found in the head of a file.
 *
 * @param names one a column; empty texts where the file has none
 * @param units from a row of their own; empty texts where there is none
 * @param headerLine counted from 1; 0 where there is none
 * @param firstData line of the first row of data, counted from 1
 */
record Head(List<String> names, List<String> units, int headerLine, int firstData) {
  /** Names stand at most this many lines above the data. */
  private static final int REACH = 6;

  Head {
    names = List.copyOf(names);
    units = List.copyOf(units);
  }

  static Head find(List<String> lines, Dialect dialect) {
    int first = firstLongBlock(lines, dialect);
    Cells cells = new Cells();
    List<String> units = List.of();
    Optional<Head> found = Optional.empty();
    long known = -1;
    for (int i = first - 1; i >= Math.max(0, first - REACH); i--) {
      if (lines.get(i).isBlank() || lines.get(i).startsWith("sep=")) {
        continue;
      }
      List<String> texts = cells.split(lines.get(i), dialect.delimiter()).texts();
      if (!couldName(texts, dialect)) {
        continue;
      }
      if (units.isEmpty() && found.isEmpty() && areUnits(texts)) {
        units = texts;
        continue;
      }
      if (DataRow.is(cells)) {
        break;
      }
      long names = Headers.known(texts);
      if (names > known) { // of rows of modules, types, numbers and names, the one of names
        known = names;
        found = Optional.of(new Head(texts, units, i + 1, first + 1));
      }
    }
    return found.orElse(nameless(dialect, units, first));
  }

  private static boolean couldName(List<String> texts, Dialect dialect) {
    long filled = texts.stream().filter(t -> !t.isEmpty()).count();
    boolean wide =
        filled >= 2 && 2 * texts.size() >= dialect.columns() && 2 * filled >= dialect.columns();
    boolean pairs = filled >= 2 && dialect.delimiter() == ',' && 2 * filled >= dialect.columns();
    return wide || pairs;
  }

  private static Head nameless(Dialect dialect, List<String> units, int first) {
    List<String> names = new ArrayList<>();
    for (int c = 0; c < dialect.columns(); c++) {
      names.add("");
    }
    return new Head(names, units, 0, first + 1);
  }

  /** The first block of rows that is at least a quarter as long as the longest. */
  private static int firstLongBlock(List<String> lines, Dialect dialect) {
    Cells cells = new Cells();
    List<int[]> blocks = new ArrayList<>();
    int misses = REACH;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).isBlank()) {
        continue;
      }
      cells.split(lines.get(i), dialect.delimiter());
      boolean row = DataRow.is(cells) && Math.abs(cells.count() - dialect.columns()) <= 1;
      if (row && misses >= 2) {
        blocks.add(new int[] {i, 0});
      }
      if (row) {
        blocks.get(blocks.size() - 1)[1]++;
      }
      misses = row ? 0 : misses + 1;
    }
    int longest = blocks.stream().mapToInt(b -> b[1]).max().orElse(0);
    return blocks.stream()
        .filter(b -> 4 * b[1] >= longest)
        .mapToInt(b -> b[0])
        .findFirst()
        .orElse(0);
  }

  /** A row of units: most of what stands in it is one. */
  static boolean areUnits(List<String> texts) {
    long filled = texts.stream().filter(t -> !t.isEmpty()).count();
    long units = texts.stream().filter(t -> LogUnit.of(t).isPresent()).count();
    return units >= 2 && 2 * units > filled;
  }

  boolean named() {
    return headerLine > 0;
  }
}
