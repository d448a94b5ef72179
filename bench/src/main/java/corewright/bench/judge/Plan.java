package corewright.bench.judge;

import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which steps of the profile a measured hold belongs to. Holds are found in the measured current,
 * so steps of equal load that follow one another are one hold.
 */
final class Plan {
  /** A hold belongs to a step whose load it meets within this part of the rated load. */
  private static final double SAME_LOAD = 0.05;

  /** A bank of resistors is as good as this, part of its current. */
  private static final double RESISTORS = 0.03;

  private final List<List<Step>> stretches;
  private final double tolerance_A;
  private final double nominal_V;
  private final boolean inStep;

  private Plan(List<List<Step>> stretches, Family family, boolean inStep) {
    this.stretches = stretches;
    this.tolerance_A = SAME_LOAD * family.ratedLoad_A();
    this.nominal_V = family.output_V();
    this.inStep = inStep;
  }

  static Plan of(Profile profile, Family family, MeasuredRun run) {
    List<List<Step>> stretches = new ArrayList<>();
    for (Step step : profile.steps()) {
      if (step.kind() != Step.Kind.HOLD) {
        continue;
      }
      if (stretches.isEmpty() || last(stretches).get(0).load_A() != step.load_A()) {
        stretches.add(new ArrayList<>());
      }
      last(stretches).add(step);
    }
    return new Plan(stretches, family, stretches.size() == run.holds().size());
  }

  /**
   * The steps that a hold belongs to: in order where the run has as many holds as the profile,
   * otherwise those with its load. Empty if there are none.
   */
  List<Step> steps(MeasuredHold hold) {
    if (inStep) {
      return stretches.get(hold.index());
    }
    Optional<Measurement> load = hold.value(Quantity.LOAD);
    return stretches.stream()
        .flatMap(List::stream)
        .filter(s -> load.isPresent() && meets(s, load.get()))
        .toList();
  }

  /** The steps of a hold where the run has as many holds as the profile; else none. */
  List<Step> inOrder(MeasuredHold hold) {
    return inStep ? stretches.get(hold.index()) : List.of();
  }

  /**
   * The load that a hold stands for, A: what was asked, where a bank of resistors draws less
   * because the output is low (Ohm's law); else what was measured, not below 0, for noise about a
   * load that is off must not take the hold out of a range.
   */
  Optional<Double> load_A(MeasuredHold hold) {
    List<Step> steps = inOrder(hold);
    return hold.value(Quantity.LOAD)
        .map(Measurement::value)
        .map(drawn -> steps.isEmpty() ? drawn : asked_A(steps.get(0).load_A(), drawn, hold))
        .map(load -> Math.max(0, load));
  }

  private double asked_A(double asked_A, double drawn_A, MeasuredHold hold) {
    double share =
        hold.value(Quantity.OUTPUT).map(v -> Math.min(1, v.value() / nominal_V)).orElse(1.0);
    boolean resistors = share < 1 && Math.abs(drawn_A - share * asked_A) <= RESISTORS * asked_A;
    return resistors ? asked_A : drawn_A;
  }

  /** Judged: a step of it says so, or the profile does not know it. */
  boolean judged(MeasuredHold hold) {
    List<Step> steps = steps(hold);
    return steps.isEmpty() || steps.stream().anyMatch(Step::judged);
  }

  /** The hold asked for a load that was not drawn. */
  boolean fellShort(MeasuredHold hold) {
    Optional<Measurement> load = hold.value(Quantity.LOAD);
    return inStep
        && load.isPresent()
        && load.get().value() < steps(hold).get(0).load_A() - tolerance_A;
  }

  private boolean meets(Step step, Measurement load) {
    return Math.abs(step.load_A() - load.value()) <= tolerance_A;
  }

  private static List<Step> last(List<List<Step>> stretches) {
    return stretches.get(stretches.size() - 1);
  }
}
