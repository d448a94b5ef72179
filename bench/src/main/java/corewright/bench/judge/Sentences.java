package corewright.bench.judge;

import corewright.bench.record.Finding;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Limit;

/** Findings in words: the reading with its U, where it was read, the limit. */
final class Sentences {
  private Sentences() {}

  /** As {@code " at 3.00 A"}; empty where the load was not measured. */
  static String atLoad(MeasuredHold hold) {
    return hold.value(Quantity.LOAD)
        .map(load -> " at " + Figures.number(load.value(), 2) + " A")
        .orElse("");
  }

  /**
   * One finding.
   *
   * @param at where it was read, as {@link #atLoad} gives it
   */
  static String of(Finding finding, String at, Rule rule) {
    return finding
        .measurement()
        .map(m -> measured(finding, m, at, rule))
        .orElse(finding.quantity().title() + at + ": " + finding.note());
  }

  private static String measured(Finding finding, Measurement m, String at, Rule rule) {
    Limit limit = finding.limit();
    String reading = subject(limit, finding.outcome()) + Figures.withU(m) + at + "; ";
    String pass = Figures.like(limit.pass(), m);
    return switch (finding.outcome()) {
      case PASS ->
          reading
              + "the limit is "
              + pass
              + ", "
              + Figures.like(Rule.margin(limit, m), m)
              + " away.";
      case FAIL, NOT_MEASURED -> reading + "the limit is " + pass + ".";
      case MARGINAL ->
          reading
              + "it passes "
              + (limit.side() == Limit.Side.AT_LEAST ? "from " : "up to ")
              + pass
              + (limit.pass() == limit.fail()
                  ? ""
                  : " and fails "
                      + (limit.side() == Limit.Side.AT_LEAST ? "below " : "above ")
                      + Figures.like(limit.fail(), m))
              + (rule == Rule.GUARDED ? ", each by U or more" : "")
              + ": marginal.";
    };
  }

  private static String subject(Limit limit, Finding.Outcome outcome) {
    if (limit.quantity() != Quantity.OUTPUT || limit.side() != Limit.Side.AT_LEAST) {
      return limit.quantity().title() + " was ";
    }
    return outcome == Finding.Outcome.PASS ? "Output held " : "Output fell to ";
  }
}
