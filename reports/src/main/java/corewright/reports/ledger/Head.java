package corewright.reports.ledger;

/**
 * The end of a chain at some moment. Printed on what leaves the shop, it proves later that the
 * chain still holds everything that it held then.
 *
 * @param chain who wrote it, as {@code bench-1}
 * @param sequence the last event's place in the chain
 * @param hash the last event's hash, or its beginning
 */
public record Head(String chain, long sequence, String hash) {
  /** Enough that nobody finds a second event with the same beginning. */
  static final int PRINTED_DIGITS = 16;

  /** As documents print it: {@code bench-1:1042:9f86d081884c7d65}. */
  public String printed() {
    return chain + ":" + sequence + ":" + hash.substring(0, PRINTED_DIGITS);
  }

  /** In full: {@code bench-1:1042:} and 64 hex digits. */
  @Override
  public String toString() {
    return chain + ":" + sequence + ":" + hash;
  }

  /**
   * A head as it was printed, or in full.
   *
   * @throws LedgerFault if this is none
   */
  public static Head of(String text) {
    String plain = text.strip();
    int second = plain.lastIndexOf(':');
    int first = plain.lastIndexOf(':', second - 1);
    String number = first < 0 ? "" : plain.substring(first + 1, second);
    String hash = plain.substring(second + 1);
    if (first < 1 || !number.matches("[1-9][0-9]{0,17}") || !hash.matches("[0-9a-f]{16,64}")) {
      throw new LedgerFault(
          "'" + text + "' is not the head of a chain",
          "Copy it as it is printed, as bench-1:1042:9f86d081884c7d65");
    }
    return new Head(plain.substring(0, first), Long.parseLong(number), hash);
  }
}
