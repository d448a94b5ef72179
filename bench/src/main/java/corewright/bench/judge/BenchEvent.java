package corewright.bench.judge;

import java.util.List;

/**
 * Something that was written down about a bench.
 *
 * @param place in the record, counted up; what was written later has a higher one
 * @param what happened
 * @param unit the reference unit, or the channel; empty where it was neither
 * @param run that a check rests on; else empty
 * @param who wrote it down, or made the run
 * @param when UTC, ISO 8601
 * @param words what was found, or why, each a sentence
 */
public record BenchEvent(
    long place, What what, String unit, String run, String who, String when, List<String> words) {
  /** What can happen to a bench. */
  public enum What {
    /** A reference unit came to what it is. */
    CHECKED_GOOD,
    /** A reference unit did not. */
    CHECKED_BAD,
    /** Nothing but reference units is run from here on. */
    LOCKED,
    /** An owner takes the lock off; results from before stay in doubt. */
    UNLOCKED,
    /** An owner takes the lock off, and says that the results from before stand. */
    CLEARED,
    /** A channel was calibrated, and had been within what the bench states. */
    CALIBRATED,
    /** A channel was calibrated, and had read further off than the bench states. */
    FOUND_OUT
  }

  public BenchEvent {
    words = List.copyOf(words);
  }
}
