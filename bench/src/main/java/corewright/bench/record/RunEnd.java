package corewright.bench.record;

/**
 * How a run ended, before anything is judged.
 *
 * @param kind what ended it
 * @param trip which limit of the unit tripped; {@link Trip#NONE} unless {@code kind} is TRIPPED
 * @param step id of the step in which it ended; empty if it was none
 * @param at_s time in the capture, s
 * @param saw one sentence: what was seen, with the reading
 * @param remedy one sentence: what to do; empty when completed
 */
public record RunEnd(Kind kind, Trip trip, String step, double at_s, String saw, String remedy) {

  /** An end that no limit of the unit brought about. A trip names its limit: it decides. */
  public RunEnd(Kind kind, String step, double at_s, String saw, String remedy) {
    this(kind, Trip.NONE, step, at_s, saw, remedy);
  }

  /** What ended a run. */
  public enum Kind {
    COMPLETED,
    /** A limit of the unit tripped: output too high or too low, supply current too high. */
    TRIPPED,
    /** The unit did not pass the dead check or the current-limited power-up. */
    REFUSED_TO_POWER,
    /** Interlock, instrument, link or bench. Nothing is said about the unit. */
    BENCH_FAULT,
    /** A person stopped it. */
    STOPPED,
    /** The process died; found at the next start. */
    ABANDONED
  }

  /** Which abort limit tripped. */
  public enum Trip {
    NONE,
    OUTPUT_OVER,
    OUTPUT_UNDER,
    SUPPLY_CURRENT_OVER,
    CASE_TOO_HOT
  }

  public static RunEnd completed(double at_s) {
    return new RunEnd(Kind.COMPLETED, "", at_s, "The profile ran to its end.", "");
  }

  /** A limit of the unit tripped. */
  public static RunEnd tripped(Trip trip, String step, double at_s, String saw, String remedy) {
    return new RunEnd(Kind.TRIPPED, trip, step, at_s, saw, remedy);
  }
}
