package corewright.bench.log.table;

import java.util.regex.Pattern;

/**
 * A time of day or a stop watch in a cell, alone or with a date before it. The date is not used:
 * only differences between times matter, and day and month are told apart by nobody.
 */
final class ClockCell {
  /** How the time of day is written. */
  enum Form {
    /** Hours, minutes, seconds: 13:05:22.310, 1:05:22 PM. */
    HOURS,
    /** Minutes and seconds with a fraction, what spreadsheets make of the former: 05:22.3. */
    MINUTES,
    /** Two numbers: hours and minutes, or minutes and seconds. */
    TWO,
    NONE
  }

  private final Form form;
  private final double seconds;

  private ClockCell(Form form, double seconds) {
    this.form = form;
    this.seconds = seconds;
  }

  Form form() {
    return form;
  }

  /** Seconds since midnight, or since the last full hour; as minutes and seconds for TWO. */
  double seconds() {
    return seconds;
  }

  private static final ClockCell NOTHING = new ClockCell(Form.NONE, Double.NaN);

  /** 13.05.22.310: with three dots it is no date. */
  private static final Pattern DOTTED =
      Pattern.compile("(\\d{1,2})\\.(\\d{2})\\.(\\d{2})[.,](\\d{1,6})( ?[AaPp].*)?");

  static ClockCell of(String text) {
    if (text.indexOf(':') < 0 && text.indexOf('.') > 0 && DOTTED.matcher(text).matches()) {
      int second = text.indexOf('.', text.indexOf('.') + 1);
      String colons =
          text.substring(0, second).replace('.', ':') + ":" + text.substring(second + 1);
      return of(colons);
    }
    int colon = text.indexOf(':');
    while (colon > 0) {
      int start = colon;
      while (start > 0 && isDigit(text.charAt(start - 1))) {
        start--;
      }
      boolean alone = start == 0 || !isPartOfNumber(text.charAt(start - 1));
      if (colon - start >= 1 && colon - start <= 3 && alone) {
        ClockCell found = at(text, start, colon);
        if (found.form != Form.NONE) {
          return found;
        }
      }
      colon = text.indexOf(':', colon + 1);
    }
    return NOTHING;
  }

  private static boolean isPartOfNumber(char c) {
    return isDigit(c) || c == ':' || c == '.';
  }

  private static ClockCell at(String text, int start, int colon) {
    int first = Integer.parseInt(text, start, colon, 10);
    int second = two(text, colon + 1);
    if (second < 0 || second > 59) {
      return NOTHING;
    }
    int next = colon + 3;
    if (next < text.length() && text.charAt(next) == ':') {
      int third = two(text, next + 1);
      if (third < 0 || third > 60) {
        return NOTHING;
      }
      double seconds = 60.0 * second + third + fraction(text, next + 3);
      double all = 3600.0 * hour(text, next + 3, first) + seconds;
      boolean before = start == 1 && text.charAt(0) == '-'; // counted down to a trigger
      return new ClockCell(Form.HOURS, before ? -all : all);
    }
    double fraction = fraction(text, next);
    boolean hasFraction = next < text.length() && isMark(text.charAt(next));
    return new ClockCell(hasFraction ? Form.MINUTES : Form.TWO, 60.0 * first + second + fraction);
  }

  private static int two(String text, int from) {
    boolean two =
        from + 2 <= text.length() && isDigit(text.charAt(from)) && isDigit(text.charAt(from + 1));
    boolean third = from + 2 < text.length() && isDigit(text.charAt(from + 2));
    return two && !third ? Integer.parseInt(text, from, from + 2, 10) : -1;
  }

  /** The part of a second after {@code .}, {@code ,} or {@code :}. */
  private static double fraction(String text, int mark) {
    double fraction = 0;
    if (mark < text.length() && isMark(text.charAt(mark))) {
      double weight = 0.1;
      for (int i = mark + 1; i < text.length() && isDigit(text.charAt(i)); i++) {
        fraction += weight * (text.charAt(i) - '0');
        weight /= 10;
      }
    }
    return Math.rint(fraction * 1e9) / 1e9;
  }

  private static boolean isMark(char c) {
    return c == '.' || c == ',' || c == ':';
  }

  /** Twelve hours with AM or PM, dots and spaces between the letters allowed. */
  private static int hour(String text, int from, int printed) {
    int i = from;
    while (i < text.length() && !Character.isLetter(text.charAt(i))) {
      i++;
    }
    char half = i < text.length() ? Character.toLowerCase(text.charAt(i)) : ' ';
    int m = i + 1;
    while (m < text.length() && !Character.isLetter(text.charAt(m))) {
      m++;
    }
    boolean marked = m < text.length() && Character.toLowerCase(text.charAt(m)) == 'm';
    if (!marked || printed > 12) {
      return printed;
    }
    return switch (half) {
      case 'a' -> printed % 12;
      case 'p' -> printed % 12 + 12;
      default -> printed;
    };
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
