package corewright.bench.run;

import corewright.profiles.Step;

/** The input through the levels of a cranking, at one load, as often as asked. */
final class CrankStep implements StepKind {

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return BACK_S
        + step.detail().repeats()
            * step.detail().levels().stream().mapToDouble(Step.Level::hold_s).sum();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    for (int repeat = 0; repeat < step.detail().repeats(); repeat++) {
      for (Step.Level level : step.detail().levels()) {
        if (level.judged()) {
          station.segment(step, most_s(step, station.context().plan()));
        } else {
          station.way(step);
        }
        station.levels().to(level.input_V(), step.inputLimit_A(), step.load_A());
        if (repeat == 0) {
          ByHand.wait(step, station);
        }
        station.sampler().watch(level.hold_s());
      }
    }
    station.back(step);
  }
}
