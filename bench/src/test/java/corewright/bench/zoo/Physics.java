package corewright.bench.zoo;

import corewright.bench.record.Finding.Outcome;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.Oracle;
import corewright.fixtures.emulate.unit.Oracle.Truth;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Family;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The verdict that the noise-free physics asks for, worked out without the meter and without the
 * judge: the limits, straight from the circuit's own levels.
 */
final class Physics {
  private Physics() {}

  /** PASS, MARGINAL or FAIL of a unit on a sound bench. */
  static Verdict verdict(UnitParameters unit, Harness harness, Family family, Profile profile) {
    List<Step> steps = profile.steps().stream().filter(s -> s.kind() == Step.Kind.HOLD).toList();
    Step first = steps.get(0);
    Oracle oracle =
        new Oracle(
            unit, harness.supply(), first.input_V(), first.inputLimit_A(), harness.loadMode());
    List<Truth> truths =
        oracle.play(
            steps.stream()
                .map(s -> new Oracle.Hold(s.input_V(), s.inputLimit_A(), s.load_A(), s.hold_s()))
                .toList(),
            profile.settle_s().orElse(0.1),
            profile.guard_s().orElse(0.01));
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      double load_A = steps.get(i).load_A();
      Optional<Double> before = i == 0 ? Optional.empty() : Optional.of(steps.get(i - 1).load_A());
      if (truths.get(i).output_V() < family.abort().outputUnder_V() && load_A > 0) {
        return Verdict.FAIL;
      }
      for (Limit limit : profile.limits()) {
        Optional<Limit> asked = limit.at(before, load_A, steps.get(i).hold_s());
        if (asked.isPresent()) {
          outcome(asked.get(), truths, i).ifPresent(outcomes::add);
        }
      }
    }
    return outcomes.contains(Outcome.FAIL)
        ? Verdict.FAIL
        : outcomes.contains(Outcome.MARGINAL) ? Verdict.MARGINAL : Verdict.PASS;
  }

  private static Optional<Outcome> outcome(Limit limit, List<Truth> truths, int i) {
    Truth truth = truths.get(i);
    double value =
        switch (limit.quantity()) {
          case OUTPUT -> truth.output_V();
          case DROOP -> truths.get(0).output_V() - truth.output_V();
          case DRIFT -> truth.drift_VperMin();
          case RIPPLE_PEAK_TO_PEAK -> truth.ripple_V();
          case RIPPLE_RMS -> truth.rippleRms_V();
          case UNDERSHOOT -> i == 0 ? Double.NaN : truth.undershoot_V();
          case RECOVERY -> i == 0 ? Double.NaN : truth.recovery_s();
          default -> Double.NaN;
        };
    if (Double.isNaN(value)) {
      return Optional.empty();
    }
    double side = limit.side() == Limit.Side.AT_LEAST ? 1 : -1;
    return Optional.of(
        side * (value - limit.pass()) >= 0
            ? Outcome.PASS
            : side * (value - limit.fail()) >= 0 ? Outcome.MARGINAL : Outcome.FAIL);
  }
}
