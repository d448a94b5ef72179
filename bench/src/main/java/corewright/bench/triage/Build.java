package corewright.bench.triage;

/**
 * Which build it is, and whether that build can be rebuilt.
 *
 * @param candidates whether something else would be done with one of the remaining candidates
 */
public record Build(Identity identity, Candidates candidates, Rebuildable rebuildable) {

  /** How sure the identification is. */
  public enum Identity {
    IDENTIFIED,
    PROBABLE,
    UNCERTAIN,
    /** A person found: wrong part, empty case, mixed serials, counterfeit. */
    FOREIGN
  }

  /** Whether the variants still possible would meet the same fate. */
  public enum Candidates {
    AGREE,
    DIFFER
  }

  /** Whether this build can be rebuilt, given what is wrong with it. */
  public enum Rebuildable {
    YES,
    /** In part, and the fault lies in that part. */
    FAULT_INSIDE,
    /** In part, and the fault lies elsewhere. */
    FAULT_OUTSIDE,
    /** In part, and where the fault lies is not known. */
    FAULT_UNKNOWN,
    NO;

    boolean open() {
      return this == YES || this == FAULT_INSIDE;
    }

    boolean closed() {
      return this == NO || this == FAULT_OUTSIDE;
    }
  }
}
