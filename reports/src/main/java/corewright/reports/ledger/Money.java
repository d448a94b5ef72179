package corewright.reports.ledger;

import java.util.Locale;

/**
 * An amount.
 *
 * @param hundredths of the currency: exact, and never a fraction of a cent
 * @param currency three capital letters, ISO 4217
 */
public record Money(long hundredths, String currency) {

  /** As {@code 120.50 EUR}. */
  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "%d.%02d %s", hundredths / 100, Math.abs(hundredths % 100), currency);
  }

  /**
   * Reads {@code 120}, {@code 120.5} or {@code 120.50}; a comma is refused because it means two
   * things.
   *
   * @throws LedgerFault if it is anything else
   */
  public static Money of(String amount, String currency) {
    String plain = amount.strip();
    if (!plain.matches("[0-9]{1,12}([.][0-9]{1,2})?") || !currency.matches("[A-Z]{3}")) {
      throw new LedgerFault(
          "'" + amount + " " + currency + "' is not an amount",
          "Write it with a point and three letters for the currency, as 120.50 EUR");
    }
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    String rest = point < 0 ? "" : plain.substring(point + 1);
    return new Money(
        Long.parseLong(whole) * 100 + Long.parseLong((rest + "00").substring(0, 2)), currency);
  }
}
