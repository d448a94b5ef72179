package corewright.reports.ledger;

/**
 * One unit that a search found.
 *
 * @param serial the maker's serial, exactly as read
 * @param why which field matched, as {@code tag}, {@code serial} or {@code part of the serial}
 */
public record Found(
    String tag, String serial, String family, String label, int visits, String why) {
  /** Why a unit was found whose tag is one slip away from what was typed. */
  public static final String MISTYPED = "tag, mistyped";

  /** Nobody asked for this unit by its name; it is a guess. */
  public boolean isGuess() {
    return why.equals(MISTYPED);
  }
}
