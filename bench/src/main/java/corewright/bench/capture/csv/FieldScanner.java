package corewright.bench.capture.csv;

import java.io.IOException;
import java.io.InputStream;

/**
 * Walks through delimited text and turns fields into whole numbers with a count of decimals,
 * without making a string of any: plain numbers eight bytes at a time, anything else byte by byte.
 * Knows the line it is in.
 */
final class FieldScanner {
  private static final int CHUNK = 1 << 18;
  private static final long LARGEST_TENTH = Long.MAX_VALUE / 10 - 1;
  private static final int END = -1;

  private final InputStream in;
  private final int delimiter;
  private final int point;
  private final PlainNumber plain;
  private final byte[] chunk = new byte[CHUNK];
  private int at;
  private int limit;
  private int line = 1;
  private long mantissa;
  private int places;

  /** What stands after a field. */
  enum After {
    FIELD,
    LINE,
    FILE
  }

  /** Whether a field held a number. */
  enum Found {
    NUMBER,
    NOTHING,
    TEXT
  }

  private After after = After.LINE;

  FieldScanner(InputStream in, char delimiter, char point) {
    this.in = in;
    this.delimiter = delimiter;
    this.point = point;
    plain = new PlainNumber(point);
  }

  /** Goes on to the line with this number; only forward. */
  void skipTo(int wanted) throws IOException {
    while (line < wanted && peek() != END) {
      skipLine();
    }
  }

  /** Goes past empty lines; whether there is another line. */
  boolean hasLine() throws IOException {
    int next = peek();
    while (next == '\n' || next == '\r') {
      take(next);
      next = peek();
    }
    return next != END;
  }

  private void skipLine() throws IOException {
    int next = peek();
    while (next != '\n' && next != END) {
      at++;
      next = peek();
    }
    if (next == '\n') {
      take(next);
    }
  }

  /** Reads one field; then {@link #mantissa}, {@link #places} and {@link #after} tell of it. */
  Found number() throws IOException {
    if (limit - at < PlainNumber.LONGEST) {
      fill();
    }
    if (limit - at >= PlainNumber.LONGEST && plain.isAt(chunk, at) && ends(chunk[plain.end()])) {
      mantissa = plain.mantissa();
      places = plain.places();
      at = plain.end();
      return Found.NUMBER;
    }
    return anyNumber();
  }

  private Found anyNumber() throws IOException {
    mantissa = 0;
    places = 0;
    int next = skipBlanks();
    boolean negative = next == '-';
    if (negative || next == '+') {
      next = following();
    }
    int digits = 0;
    boolean fraction = false;
    while ((next >= '0' && next <= '9') || next == point) {
      if (next == point) {
        if (fraction) {
          return text();
        }
        fraction = true;
      } else {
        digits++;
        if (mantissa <= LARGEST_TENTH) {
          mantissa = 10 * mantissa + (next - '0');
          places += fraction ? 1 : 0;
        } else {
          places -= fraction ? 0 : 1; // digits beyond what 63 bits hold
        }
      }
      next = following();
    }
    if (negative) {
      mantissa = -mantissa;
    }
    if (digits > 0 && (next == 'e' || next == 'E')) {
      following();
      if (!exponent()) {
        return text();
      }
    }
    next = skipBlanks();
    if (!ends(next)) {
      return text();
    }
    return digits > 0 ? Found.NUMBER : fraction || negative ? Found.TEXT : Found.NOTHING;
  }

  private boolean exponent() throws IOException {
    int next = peek();
    boolean negative = next == '-';
    if (negative || next == '+') {
      next = following();
    }
    int exponent = 0;
    int digits = 0;
    while (next >= '0' && next <= '9' && digits < 4) {
      exponent = 10 * exponent + (next - '0');
      digits++;
      next = following();
    }
    places += negative ? exponent : -exponent;
    return digits > 0 && digits < 4;
  }

  /** Goes past a field that is not used. */
  void skip() throws IOException {
    int next = peek();
    while (!ends(next)) {
      at++;
      next = peek();
    }
    ends(next);
  }

  private Found text() throws IOException {
    skip();
    return Found.TEXT;
  }

  /** Goes past the delimiter or line end that {@link #after} names. */
  void pass() throws IOException {
    int next = peek();
    if (next == '\r') {
      take(next);
      next = peek();
    }
    if (next != END && !(after == After.LINE && next != '\n')) {
      take(next);
    }
  }

  private boolean ends(int next) {
    if (next == delimiter) {
      after = After.FIELD;
      return true;
    }
    if (next == '\n' || next == '\r') {
      after = After.LINE;
      return true;
    }
    if (next == END) {
      after = After.FILE;
      return true;
    }
    return false;
  }

  private int skipBlanks() throws IOException {
    int next = peek();
    while ((next == ' ' || next == '\t') && next != delimiter) {
      next = following();
    }
    return next;
  }

  private int following() throws IOException {
    at++;
    return peek();
  }

  private void take(int next) {
    at++;
    if (next == '\n') {
      line++;
    }
  }

  private int peek() throws IOException {
    if (at == limit) {
      fill();
      if (at == limit) {
        return END;
      }
    }
    return chunk[at];
  }

  /** Reads on behind what is left of the chunk. */
  private void fill() throws IOException {
    System.arraycopy(chunk, at, chunk, 0, limit - at);
    limit -= at;
    at = 0;
    limit += Math.max(0, in.read(chunk, limit, chunk.length - limit));
  }

  long mantissa() {
    return mantissa;
  }

  int places() {
    return places;
  }

  After after() {
    return after;
  }

  int line() {
    return line;
  }
}
