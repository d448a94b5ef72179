package corewright.reports.document;

import java.time.Instant;
import java.util.Optional;

/**
 * Who answers for one text that a run was held against.
 *
 * @param what as {@code profile sd48-ship}
 * @param signed whose signature the text carries; empty where nobody of this shop has signed it
 * @param delivered whether it then counts as it came with the program
 * @see "ISO/IEC 17025:2017, 7.8.6.2: a statement of conformity says which limits were applied"
 */
public record Answered(String what, Optional<Signature> signed, boolean delivered) {

  /** One signature. */
  public record Signature(String who, Instant at) {}
}
