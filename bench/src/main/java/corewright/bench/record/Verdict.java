package corewright.bench.record;

/** The bench verdict on one run. VOID is never PASS or FAIL. */
public enum Verdict {
  PASS,
  /** Inside the family's declared marginal band, or a ship limit within ± U. */
  MARGINAL,
  FAIL,
  /** Dead short, over-voltage, or did not pass the current-limited power-up. */
  UNSAFE,
  /** Input or bench: nothing is said about the unit. */
  VOID,
  /** Stopped by a person or a lost link. */
  INCOMPLETE
}
