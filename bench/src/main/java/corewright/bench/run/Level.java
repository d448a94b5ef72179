package corewright.bench.run;

import corewright.profiles.Step;

/** One level of input and load for a while, read by itself: no load, highest line. */
final class Level implements StepKind {

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return step.hold_s();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(step.hold_s());
  }

  @Override
  public void run(Step step, Station station) {
    station.levels().to(step.input_V(), step.inputLimit_A(), step.load_A());
    ByHand.wait(step, station);
    station.segment(step, most_s(step, station.context().plan()));
    station.sampler().watch(step.hold_s());
    station.back(step);
  }
}
