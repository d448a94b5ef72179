package corewright.bench.run;

import corewright.profiles.Step;
import java.util.Map;
import java.util.Optional;

/** What the engine does in one kind of step. To add one: its class, its line here. */
interface StepKind {

  /** Which class carries out which kind. */
  Map<Step.Kind, StepKind> ALL =
      Map.ofEntries(
          Map.entry(Step.Kind.DEAD_CHECK, new DeadCheck()),
          Map.entry(Step.Kind.FIRST_POWER, new FirstPower()),
          Map.entry(Step.Kind.START, new StartStep()),
          Map.entry(Step.Kind.QUIESCENT, new Level()),
          Map.entry(Step.Kind.LINES, new LinesStep()),
          Map.entry(Step.Kind.LOCK_OUT, new LockOutStep()),
          Map.entry(Step.Kind.HOLD, new Hold()),
          Map.entry(Step.Kind.HIGH_LINE, new Level()),
          Map.entry(Step.Kind.CRANK, new CrankStep()),
          Map.entry(Step.Kind.THERMAL, new ThermalStep()),
          Map.entry(Step.Kind.DECAY, new DecayStep()),
          Map.entry(Step.Kind.BY_HAND, new ByHandStep()),
          Map.entry(Step.Kind.DISCHARGE, new DischargeStep()));

  /** A source needs no longer from one level to another (common practice, no source). */
  double BACK_S = 0.2;

  /** What a segment is called that is read by itself; what it is not read from has its kind. */
  String READ = "READ";

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

    /** What follows is read by itself, and may take so long on the host's clock. */
    void segment(Step of, double most_s) {
      sampler.step(of.id(), READ, most_s);
    }

    /** What follows is not read. */
    void way(Step of) {
      sampler.step(of.id(), of.kind().name(), StepKind.of(of.kind()).most_s(of, context.plan()));
    }

    /** Input nominal and load off again: the next hold must not begin at this step's level. */
    void back(Step of) {
      way(of);
      levels.to(context.plan().family().input_V(), of.inputLimit_A(), 0);
      sampler.watch(BACK_S);
    }

    DischargeProof proof() {
      return new DischargeProof(
          sampler, context.bench(), context.plan().family().discharge(), Optional.of(aids.decay()));
    }
  }
}
