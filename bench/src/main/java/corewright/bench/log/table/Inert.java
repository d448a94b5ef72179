package corewright.bench.log.table;

/**
 * Text out of a file made harmless for whatever shows it next: a spreadsheet takes a cell that
 * begins with {@code = + - @} for a formula and runs it.
 */
public final class Inert {
  private static final int LONGEST = 60;

  private Inert() {}

  /** One line without control characters, shortened, with an apostrophe before a formula's sign. */
  public static String text(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length() && out.length() < LONGEST; i++) {
      char c = text.charAt(i);
      out.append(Character.isISOControl(c) ? ' ' : c);
    }
    String plain = out.toString().strip();
    boolean formula = !plain.isEmpty() && "=+-@|%".indexOf(plain.charAt(0)) >= 0;
    return formula ? "'" + plain : plain;
  }
}
