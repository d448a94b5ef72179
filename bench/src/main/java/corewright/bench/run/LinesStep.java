package corewright.bench.run;

import corewright.profiles.Step;

/** The input through its levels at one load: a segment for each. */
final class LinesStep implements StepKind {

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return step.detail().levels().stream().mapToDouble(Step.Level::hold_s).sum();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    for (Step.Level level : step.detail().levels()) {
      station.levels().to(level.input_V(), step.inputLimit_A(), step.load_A());
      ByHand.wait(step, station);
      station.segment(step, Hold.allowance_s(level.hold_s()));
      station.sampler().watch(level.hold_s());
    }
    station.back(step);
  }
}
