package corewright.station.work.books;

import java.math.BigDecimal;
import java.util.Optional;

/** A number as a spreadsheet shows it, with its unit or currency before or behind it. */
final class NumberText {
  private NumberText() {}

  /**
   * The number; empty where the cell is none.
   *
   * @param decimal mark; the other one may stand between thousands
   */
  static Optional<BigDecimal> read(String cell, char decimal) {
    char grouping = decimal == ',' ? '.' : ',';
    String digits =
        cell.strip()
            .replaceAll("^[\\p{L}\\p{Sc}\\s]+|[\\p{L}\\p{Sc}\\s]+$", "")
            .replaceAll("[\\s'\u00A0\u202F]", "");
    String number = "[+-]?(\\d{1,3}(\\" + grouping + "\\d{3})+|\\d+)(\\" + decimal + "\\d+)?";
    if (!digits.matches(number)) {
      return Optional.empty();
    }
    return Optional.of(
        new BigDecimal(digits.replace(String.valueOf(grouping), "").replace(decimal, '.')));
  }
}
