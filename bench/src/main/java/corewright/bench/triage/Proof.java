package corewright.bench.triage;

/** What is known about how the unit works. */
public record Proof(Evidence evidence, Coverage coverage) {

  /** The bench's verdict, as far as it carries. */
  public enum Evidence {
    /** Not tested, or only at rest. */
    NONE,
    /** The supply did not hold. */
    VOID_INPUT,
    /** The bench, its fixture or its reference unit is in doubt. */
    VOID_BENCH,
    INCOMPLETE,
    PASS,
    /** One marginal run. */
    MARGINAL,
    /** Marginal again: five runs, another bench. */
    MARGINAL_CONFIRMED,
    FAIL,
    UNSAFE;

    boolean isVoid() {
      return this == VOID_INPUT || this == VOID_BENCH;
    }

    boolean bad() {
      return this == MARGINAL_CONFIRMED || this == FAIL || this == UNSAFE;
    }
  }

  /** Whether the conditions of the complaint were tried. */
  public enum Coverage {
    COMPLETE,
    /** The complaint names cold or heat, and the unit was not tested there. */
    TEMPERATURE_OPEN,
    /** The complaint is intermittent, and there was no long soak. */
    SOAK_OPEN
  }
}
