package corewright.bench.judge;

import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
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

  private final List<List<Step>> stretches;
  private final double tolerance_A;
  private final boolean inStep;

  private Plan(List<List<Step>> stretches, double tolerance_A, boolean inStep) {
    this.stretches = stretches;
    this.tolerance_A = tolerance_A;
    this.inStep = inStep;
  }

  static Plan of(Profile profile, double rated_A, MeasuredRun run) {
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
    return new Plan(stretches, SAME_LOAD * rated_A, stretches.size() == run.holds().size());
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
