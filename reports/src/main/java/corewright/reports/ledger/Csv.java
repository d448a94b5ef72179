package corewright.reports.ledger;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Rows as CSV that no spreadsheet runs: a text that could begin a formula gets an apostrophe before
 * it. Numbers stay as they are.
 *
 * @see "RFC 4180"
 */
public final class Csv {
  private static final String FORMULA = "=+-@\t\r";

  private Csv() {}

  public static void row(Appendable to, List<String> cells) throws IOException {
    to.append(cells.stream().map(Csv::cell).collect(Collectors.joining(","))).append("\r\n");
  }

  static String cell(String text) {
    String inert =
        !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 && !isNumber(text)
            ? "'" + text
            : text;
    return inert.matches("(?s).*[\",\r\n].*") ? "\"" + inert.replace("\"", "\"\"") + "\"" : inert;
  }

  private static boolean isNumber(String text) {
    return text.matches("[+-]?[0-9]+([.][0-9]+)?([eE][+-]?[0-9]+)?");
  }
}
