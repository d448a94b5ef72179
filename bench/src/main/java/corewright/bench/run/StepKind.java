package corewright.bench.run;

import corewright.profiles.Step;
import java.util.Map;
import java.util.Optional;

/** What the engine does in one kind of step. To add one: its class, its line here. */
interface StepKind {

  /** Which class carries out which kind. */
  Map<Step.Kind, StepKind> ALL =
      Map.of(
          Step.Kind.DEAD_CHECK, new DeadCheck(),
          Step.Kind.FIRST_POWER, new FirstPower(),
          Step.Kind.HOLD, new Hold(),
          Step.Kind.DISCHARGE, new DischargeStep());

  /** The class that carries out a kind. */
  static StepKind of(Step.Kind kind) {
    StepKind known = ALL.get(kind);
    if (known == null) {
      throw new IllegalStateException("no class carries out a step of kind " + kind);
    }
    return known;
  }

  /** Time that the step usually takes, s of samples: for a progress display. */
  double usual_s(Step step, RunPlan plan);

  /** Longest that the step may take on the host's clock, s. */
  double most_s(Step step, RunPlan plan);

  /**
   * Carries it out.
   *
   * @throws EndOfRun if the run must end here
   */
  void run(Step step, Station station);

  /**
   * What a step works with.
   *
   * @param context plan and instruments
   * @param sampler gives the frames
   * @param levels commands source and load
   * @param aids what the bench has beside them
   * @param step id of the step
   */
  record Station(RunContext context, Sampler sampler, Levels levels, Aids aids, String step) {

    DischargeProof proof() {
      return new DischargeProof(
          sampler, context.bench(), context.plan().family().discharge(), Optional.of(aids.decay()));
    }
  }
}
