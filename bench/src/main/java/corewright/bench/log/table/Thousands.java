package corewright.bench.log.table;

import java.util.List;

/**
 * Whether the mark in a column of times parts thousands: 1,250 ms is twelve hundred and fifty, not
 * one and a quarter. A single cell cannot tell; the column can, by how it rises.
 */
final class Thousands {
  private static final int GROUP = 3;

  private Thousands() {}

  /** Whether every cell that holds {@code mark} could be whole thousands, and one really does. */
  static boolean possible(List<String> cells, char mark) {
    boolean seen = false;
    for (String cell : cells) {
      int at = cell.indexOf(mark);
      if (at < 0) {
        if (digits(cell) > GROUP) {
          return false; // 1250 beside 1,250: nobody writes both
        }
        continue;
      }
      if (!grouped(cell, mark)) {
        return false;
      }
      seen = true;
    }
    return seen;
  }

  private static boolean grouped(String cell, char mark) {
    int first = cell.startsWith("-") ? 1 : 0;
    int at = cell.indexOf(mark);
    if (at - first < 1 || at - first > GROUP || cell.charAt(first) == '0') {
      return false;
    }
    for (int from = at; from < cell.length(); from += GROUP + 1) {
      boolean three = from + GROUP < cell.length() && cell.charAt(from) == mark;
      for (int i = 1; three && i <= GROUP; i++) {
        three = Character.isDigit(cell.charAt(from + i));
      }
      if (!three) {
        return false;
      }
    }
    return true;
  }

  private static long digits(String cell) {
    return cell.chars().filter(Character::isDigit).count();
  }
}
