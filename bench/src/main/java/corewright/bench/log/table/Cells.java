package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One line cut into cells, used again for the next. A cell that begins with a quotation mark runs
 * to the mark that closes it, whatever stands between.
 *
 * @see "RFC 4180, section 2, rules 5 to 7"
 */
final class Cells {
  /** Stands for runs of two or more spaces between columns that were set to line up. */
  static final char SPACES = ' ';

  private String line = "";
  private int[] from = new int[32];
  private int[] to = new int[32];
  private int count;

  Cells split(String text, char delimiter) {
    line = text;
    count = 0;
    int at = 0;
    int end = text.length();
    while (true) {
      int start = at;
      while (start < end && text.charAt(start) == ' ' && delimiter != SPACES) {
        start++;
      }
      if (start < end && text.charAt(start) == '"') {
        int close = closingQuote(text, start + 1, delimiter);
        if (close > 0) {
          add(start + 1, close);
          at = nextDelimiter(text, close + 1, delimiter);
        } else {
          at = nextDelimiter(text, start, delimiter);
          add(start, Math.min(at, end));
        }
      } else {
        at = nextDelimiter(text, start, delimiter);
        add(start, Math.min(at, end));
      }
      if (at >= end) {
        return this;
      }
      at = after(text, at, delimiter);
    }
  }

  int count() {
    return count;
  }

  String line() {
    return line;
  }

  int from(int cell) {
    return from[cell];
  }

  int to(int cell) {
    return to[cell];
  }

  /** The cell's text without spaces at its ends; empty where the line has no such cell. */
  String text(int cell) {
    return cell < count ? line.substring(from[cell], to[cell]) : "";
  }

  boolean blank(int cell) {
    return cell >= count || from[cell] == to[cell];
  }

  List<String> texts() {
    List<String> all = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      all.add(text(i));
    }
    return all;
  }

  /** Cell {@code into} takes in the one after it, decimal mark and all; used by comma pairs. */
  void join(int[] firstPiece, int[] lastPiece) {
    int[] newFrom = new int[firstPiece.length];
    int[] newTo = new int[firstPiece.length];
    for (int i = 0; i < firstPiece.length; i++) {
      newFrom[i] = from[firstPiece[i]];
      newTo[i] = to[lastPiece[i]];
    }
    count = firstPiece.length;
    from = Arrays.copyOf(newFrom, Math.max(32, count));
    to = Arrays.copyOf(newTo, Math.max(32, count));
  }

  private void add(int start, int end) {
    int a = start;
    int b = end;
    while (a < b && line.charAt(a) <= ' ') {
      a++;
    }
    while (b > a && line.charAt(b - 1) <= ' ') {
      b--;
    }
    if (count == from.length) {
      from = Arrays.copyOf(from, 2 * count);
      to = Arrays.copyOf(to, 2 * count);
    }
    from[count] = a;
    to[count++] = b;
  }

  /** Position of the mark that closes the cell: one followed by a delimiter or the end. */
  private static int closingQuote(String text, int start, char delimiter) {
    for (int i = start; i < text.length(); i++) {
      if (text.charAt(i) != '"') {
        continue;
      }
      if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
        i++;
        continue;
      }
      int next = i + 1;
      while (next < text.length() && text.charAt(next) == ' ' && delimiter != SPACES) {
        next++;
      }
      if (next == text.length() || text.charAt(next) == delimiter) {
        return i;
      }
    }
    return -1;
  }

  private static int nextDelimiter(String text, int start, char delimiter) {
    if (delimiter != SPACES) {
      int found = text.indexOf(delimiter, start);
      return found < 0 ? text.length() : found;
    }
    int found = text.indexOf("  ", start);
    return found < 0 ? text.length() : found;
  }

  private static int after(String text, int at, char delimiter) {
    int next = at + 1;
    while (delimiter == SPACES && next < text.length() && text.charAt(next) == ' ') {
      next++;
    }
    return next;
  }
}
