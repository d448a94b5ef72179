package corewright.bench.run;

import corewright.profiles.Step;
import java.util.Optional;

/** One load for a moment, sampled faster than anything else in the profile. */
final class BurstStep implements StepKind {

  /** The way there and back is as fast as the rest. */
  @Override
  public Optional<Double> rate_Hz(Step step) {
    return Optional.empty();
  }

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return 2 * BACK_S + step.hold_s();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    station.levels().to(step.input_V(), step.inputLimit_A(), step.load_A());
    ByHand.wait(step, station);
    station.sampler().watch(BACK_S);
    station.fast(step);
    station.back(step);
  }
}
