package corewright.reports.ledger;

/**
 * A part that was fitted, from a lot of the store.
 *
 * @param place where on the board, as {@code C1}
 * @param removed what the removed part measured, as {@code 1180 uF, 61 mohm}; may be empty
 */
public record Fitted(String place, String part, String lot, String removed) {
  public Fitted {
    lot = Tags.read(lot);
  }
}
