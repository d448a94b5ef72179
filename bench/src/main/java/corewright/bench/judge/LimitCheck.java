package corewright.bench.judge;

import corewright.bench.record.Finding;
import corewright.bench.record.Finding.Outcome;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every limit held against every judged hold with its load. */
final class LimitCheck {
  /** Readings that need a load edge at the start of the hold. */
  private static final Set<Quantity> OF_AN_EDGE =
      Set.of(Quantity.UNDERSHOOT, Quantity.OVERSHOOT, Quantity.RECOVERY);

  private final Rule rule;
  private final Plan plan;

  LimitCheck(Rule rule, Plan plan) {
    this.rule = rule;
    this.plan = plan;
  }

  /** Findings in the order of holds, then limits; a limit that no hold met comes last. */
  List<Finding> findings(MeasuredRun run, List<MeasuredHold> judged, List<Limit> limits) {
    List<Finding> findings = new ArrayList<>();
    for (MeasuredHold hold : judged) {
      for (Limit limit : limits) {
        if (!run.readings().containsKey(limit.quantity())) {
          applied(limit, run, hold).ifPresent(l -> findings.add(inHold(l, hold)));
        }
      }
    }
    for (Limit limit : limits) {
      Reading ofRun = run.readings().get(limit.quantity());
      if (ofRun != null) {
        findings.add(finding(limit, -1, ofRun));
      } else if (limit.fromHold_s() == 0
          && limit.edge().isEmpty()
          && findings.stream().noneMatch(f -> f.limit().id().equals(limit.id()))) {
        String why =
            limit.quantity().ofRun() ? "no step read it." : "no hold drew " + range(limit) + ".";
        findings.add(none(limit, -1, Outcome.NOT_MEASURED, why));
      }
    }
    return List.copyOf(findings);
  }

  /** What the limit comes to for this hold; empty where it does not apply. */
  private Optional<Limit> applied(Limit limit, MeasuredRun run, MeasuredHold hold) {
    boolean noEdge =
        OF_AN_EDGE.contains(limit.quantity()) && hold.recoveryState().equals("no_edge");
    Optional<Double> before =
        hold.index() == 0 ? Optional.empty() : plan.load_A(run.holds().get(hold.index() - 1));
    return plan.load_A(hold)
        .filter(load -> !noEdge)
        .flatMap(load -> limit.at(before, load, hold.end_s() - hold.start_s()));
  }

  private Finding inHold(Limit limit, MeasuredHold hold) {
    double watched_s = hold.windowEnd_s() - hold.start_s();
    if (limit.quantity() == Quantity.RECOVERY
        && hold.recoveryState().equals("not_recovered")
        && watched_s > limit.fail()) {
      return none(
          limit,
          hold.index(),
          Outcome.FAIL,
          "it had not come back after " + Figures.number(watched_s, 3) + " s.");
    }
    Reading reading = hold.readings().get(limit.quantity());
    return finding(limit, hold.index(), reading == null ? Reading.none("not read.") : reading);
  }

  private Finding finding(Limit limit, int hold, Reading reading) {
    if (reading instanceof Reading.NotMeasured none) {
      return none(limit, hold, Outcome.NOT_MEASURED, none.reason());
    }
    Measurement m = reading.measurement().orElseThrow();
    List<String> flags = ((Reading.Measured) reading).flags();
    return new Finding(
        limit,
        hold,
        Optional.of(m),
        rule.outcome(limit, m),
        Optional.of(Rule.margin(limit, m)),
        Optional.of(Rule.conformity(limit, m)),
        String.join(" ", flags));
  }

  private static Finding none(Limit limit, int hold, Outcome outcome, String note) {
    return new Finding(
        limit, hold, Optional.empty(), outcome, Optional.empty(), Optional.empty(), note);
  }

  private static String range(Limit limit) {
    return limit.to_A() < 1e6 && limit.to_A() > limit.from_A()
        ? "between "
            + Figures.number(limit.from_A(), 2)
            + " and "
            + Figures.number(limit.to_A(), 2)
            + " A"
        : Figures.number(limit.from_A(), 2) + " A or more";
  }
}
