package corewright.bench.log.table;

/** What every line goes through first: signs that mean the same become the same. */
final class Tidy {
  private Tidy() {}

  /**
   * The line without NUL and byte order marks; every kind of space (no-break, thin, narrow) is a
   * plain one and every kind of minus a hyphen.
   */
  static String line(String raw) {
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      if (c > 126 || (c < ' ' && c != '\t')) {
        return rewritten(raw);
      }
    }
    return raw;
  }

  private static String rewritten(String raw) {
    StringBuilder out = new StringBuilder(raw.length());
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      switch (c) {
        case '\0', '\uFEFF', '\u200B', '\u200E', '\u200F' -> {}
        case '\u00A0', '\u2007', '\u2009', '\u202F' -> out.append(' ');
        case '\u2212', '\u2010', '\u2011', '\u2012', '\u2013', '\u2014' -> out.append('-');
        case '\u2018', '\u2019' -> out.append('\'');
        case '\u00B5', '\u03BC' -> out.append('u'); // micro sign and Greek mu
        default -> out.append(c < ' ' && c != '\t' ? ' ' : c);
      }
    }
    return out.toString();
  }
}
