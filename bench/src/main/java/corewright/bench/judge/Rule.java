package corewright.bench.judge;

import corewright.bench.record.Finding.Outcome;
import corewright.measures.Conformity;
import corewright.measures.Measurement;
import corewright.profiles.Limit;
import corewright.profiles.Profile.Purpose;

/**
 * The decision rule: what a reading near a limit is called, and the risk that goes with it.
 *
 * @see "ILAC-G8:09/2019, 4.2; JCGM 106:2012, 8.2 and 8.3"
 */
public enum Rule {
  /** Guard band 0: a reading on the limit is as likely wrong as right. The risk is only labour. */
  SIMPLE("simple acceptance", 0),
  /** Guard band w = U = 2u: at most 2.3 % of what passes does not conform. */
  GUARDED("guard band U = 2u", 2);

  private final String words;
  private final double guard_u;

  Rule(String words, double guard_u) {
    this.words = words;
    this.guard_u = guard_u;
  }

  /** Arrival accepts simply; what leaves, and what comes back, is held with the guard band. */
  public static Rule of(Purpose purpose) {
    return purpose == Purpose.ARRIVAL ? SIMPLE : GUARDED;
  }

  /** As printed on documents. */
  public String words() {
    return words;
  }

  /**
   * Passes if the reading is good by the guard band or more, fails if it is beyond the fail limit
   * by more than the guard band, and is marginal between.
   */
  public Outcome outcome(Limit limit, Measurement m) {
    double guard = guard_u * m.u();
    if (margin(limit, m) >= guard) {
      return Outcome.PASS;
    }
    return toward(limit, m.value() - limit.fail()) < -guard ? Outcome.FAIL : Outcome.MARGINAL;
  }

  /** Distance to the pass limit, positive on the good side, in the quantity's unit. */
  static double margin(Limit limit, Measurement m) {
    return toward(limit, m.value() - limit.pass());
  }

  /** Probability that the true value is on the good side of the pass limit. */
  static double conformity(Limit limit, Measurement m) {
    return limit.side() == Limit.Side.AT_LEAST
        ? Conformity.atLeast(m, limit.pass())
        : Conformity.atMost(m, limit.pass());
  }

  private static double toward(Limit limit, double difference) {
    return limit.side() == Limit.Side.AT_LEAST ? difference : -difference;
  }
}
