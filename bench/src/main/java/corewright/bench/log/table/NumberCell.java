package corewright.bench.log.table;

/**
 * A cell read as a number under one decimal mark. What it cannot be is {@code NaN}: a date that a
 * spreadsheet made of a number, a formula, a no-data sign.
 */
final class NumberCell {
  private static final double[] POWERS = new double[19];

  static {
    POWERS[0] = 1;
    for (int i = 1; i < POWERS.length; i++) {
      POWERS[i] = POWERS[i - 1] * 10;
    }
  }

  private final String text;
  private final int end;
  private final char decimal;
  private int at;
  private double value = Double.NaN;
  private int lastGroup = -1;
  private boolean fraction;

  private NumberCell(String text, int from, int to, char decimal) {
    this.text = text;
    this.at = from;
    this.end = to;
    this.decimal = decimal;
    if (from < to) {
      skipGuards();
      read();
    }
  }

  /** The number in {@code text[from, to)}, a unit after it allowed; {@code NaN} if it is none. */
  static double value(String text, int from, int to, char decimal) {
    NumberCell cell = new NumberCell(text, from, to, decimal);
    return cell.remainderIsUnit() ? cell.value : Double.NaN;
  }

  static double value(String text, char decimal) {
    return value(text, 0, text.length(), decimal);
  }

  /**
   * How well the cell reads as a number: 1 if plainly, 0.5 if it needs thousands separators, which
   * might be the other decimal mark, 0 if not at all.
   */
  static double credit(String text, char decimal) {
    NumberCell cell = new NumberCell(text, 0, text.length(), decimal);
    if (Double.isNaN(cell.value) || !cell.remainderIsUnit()) {
      return 0;
    }
    return cell.lastGroup >= 0 && !cell.fraction ? 0.5 : 1;
  }

  /** The text after the number, as {@code V} in {@code 47.6 V}. */
  static String unit(String text, char decimal) {
    NumberCell cell = new NumberCell(text, 0, text.length(), decimal);
    return Double.isNaN(cell.value) ? "" : text.substring(cell.at, cell.end).strip();
  }

  /** Decimals that the cell prints. */
  static int decimals(String text, char decimal) {
    int mark = text.indexOf(decimal);
    int digits = 0;
    while (mark >= 0
        && mark + 1 + digits < text.length()
        && isDigit(text.charAt(mark + 1 + digits))) {
      digits++;
    }
    return digits;
  }

  /** Spreadsheets guard numbers that shall stay as they are with an apostrophe. */
  private void skipGuards() {
    if (text.charAt(at) == '\'') {
      at++;
    }
  }

  private void read() {
    boolean negative = at < end && text.charAt(at) == '-';
    if (at < end && (negative || text.charAt(at) == '+')) {
      at++;
    }
    int start = at;
    long digits = 0;
    int seen = 0;
    while (at < end) {
      char c = text.charAt(at);
      if (isDigit(c)) {
        digits = digits * 10 + (c - '0');
        seen++;
        at++;
      } else if (seen > 0 && groupFollows(start)) {
        lastGroup = at++;
      } else {
        break;
      }
      if (seen > 18) {
        return;
      }
    }
    int decimals = 0;
    if (at < end && text.charAt(at) == decimal) {
      int mark = at++;
      while (at < end && isDigit(text.charAt(at)) && seen + decimals < 18) {
        digits = digits * 10 + (text.charAt(at++) - '0');
        decimals++;
      }
      if (decimals == 0) {
        at = mark; // "10." is the beginning of a date, not a number
        return;
      }
      fraction = true;
      while (at < end && isDigit(text.charAt(at))) {
        at++;
      }
    }
    if (seen + decimals > 0) {
      // Both are whole and exact below 2^53 and 10^22, so the quotient is correctly rounded.
      double magnitude = digits / POWERS[decimals] * exponent();
      value = negative ? -magnitude : magnitude;
    }
  }

  private double exponent() {
    if (at + 1 >= end || (text.charAt(at) != 'e' && text.charAt(at) != 'E')) {
      return 1;
    }
    int i = at + 1;
    boolean negative = text.charAt(i) == '-';
    if (negative || text.charAt(i) == '+') {
      i++;
    }
    int power = 0;
    int start = i;
    while (i < end && isDigit(text.charAt(i)) && i - start < 3) {
      power = power * 10 + (text.charAt(i++) - '0');
    }
    if (i == start) {
      return 1;
    }
    at = i;
    return Math.pow(10, negative ? -power : power);
  }

  /** A thousands separator: after one to three digits, before exactly three, never after a zero. */
  private boolean groupFollows(int start) {
    char c = text.charAt(at);
    boolean separator = c == '\'' || c == ' ' || c == (decimal == ',' ? '.' : ',');
    boolean placed =
        lastGroup < 0
            ? at - start <= 3 && text.charAt(start) != '0'
            : c == text.charAt(lastGroup) && at - lastGroup == 4;
    if (!separator || !placed || at + 3 >= end) {
      return false;
    }
    boolean three =
        isDigit(text.charAt(at + 1))
            && isDigit(text.charAt(at + 2))
            && isDigit(text.charAt(at + 3));
    boolean four = at + 4 < end && isDigit(text.charAt(at + 4));
    return three && !four;
  }

  private boolean remainderIsUnit() {
    int i = at;
    while (i < end && text.charAt(i) == ' ') {
      i++;
    }
    return i >= end || LogUnit.of(text.substring(i, end)).isPresent();
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
