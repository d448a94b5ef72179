package corewright.bench.life;

/** What was found about a unit that came back, each at first unknown. */
public record ClaimFacts(
    Identity identity,
    Term term,
    Seal seal,
    Cause cause,
    Returned returned,
    Coverage coverage,
    Group group) {

  /** By serial and hidden mark, against the photographs from before it left. */
  public enum Identity {
    UNKNOWN,
    OURS,
    NOT_OURS
  }

  /** Whether the claim came within the warranty. */
  public enum Term {
    UNKNOWN,
    IN,
    OUT
  }

  /** The seal and the hidden mark, before anything was opened. */
  public enum Seal {
    UNKNOWN,
    INTACT,
    BROKEN
  }

  /** Whether something outside the unit did it. */
  public enum Cause {
    UNKNOWN,
    NONE,
    EXTERNAL
  }

  /** The test as returned, before opening, against the limits it left with. */
  public enum Returned {
    UNKNOWN,
    PASS,
    FAIL
  }

  /** Whether it was tested cold, hot and tapped too. */
  public enum Coverage {
    UNKNOWN,
    AMBIENT,
    COMPLETE
  }

  /** The confirmed fault, against what was rebuilt. */
  public enum Group {
    UNKNOWN,
    SAME,
    OTHER
  }
}
