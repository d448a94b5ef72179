package corewright.bench.run;

import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;

/**
 * What the engine does in one kind of step. To add one: its class, its line in {@link StepKinds}.
 */
interface StepKind {

  /** A source needs no longer from one level to another (common practice, no source). */
  double BACK_S = 0.2;

  /** What a segment is called that is read by itself; what it is not read from has its kind. */
  String READ = "READ";

  /** Why a bench cannot do it, as the end of a sentence; empty where it can. */
  default Optional<String> cannot(Step step, Abilities bench) {
    return bench.tooSlow(step);
  }

  /** What of it a bench cannot do, though it does the rest, each a sentence. */
  default List<String> without(Step step, Abilities bench) {
    return List.of();
  }

  /** At how many samples a second it begins; empty: at the profile's. */
  default Optional<Double> rate_Hz(Step step) {
    return step.detail().sampleRate_Hz();
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

    /** Reads at the step's own rate while it holds; the way there and back is the profile's. */
    void fast(Step of) {
      fast(of, of.hold_s());
    }

    /** The same, for so long. */
    void fast(Step of, double hold_s) {
      double rate_Hz = of.detail().sampleRate_Hz().orElseThrow();
      sampler.pace(Framing.of((int) rate_Hz, context.bench().digitizer().channels().size()));
      segment(of, StepKinds.of(of.kind()).most_s(of, context.plan()));
      sampler.watch(hold_s);
      sampler.pace(context.framing());
    }

    /** What follows is not read. */
    void way(Step of) {
      sampler.step(of.id(), of.kind().name(), StepKinds.of(of.kind()).most_s(of, context.plan()));
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
