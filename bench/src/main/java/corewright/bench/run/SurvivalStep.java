package corewright.bench.run;

import corewright.profiles.Step;
import java.util.List;

/**
 * The input far down and up again, without load: a loaded output would fall at once and end the
 * run. What is seen is told; nothing is judged by it.
 */
final class SurvivalStep implements StepKind {

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return 2 * BACK_S + step.detail().levels().stream().mapToDouble(Step.Level::hold_s).sum();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    List<Step.Level> levels = step.detail().levels();
    station.levels().to(levels.get(0).input_V(), step.inputLimit_A(), 0);
    station.sampler().watch(BACK_S);
    station.segment(step, most_s(step, station.context().plan()));
    for (Step.Level level : levels) {
      station.levels().source(level.input_V(), step.inputLimit_A());
      station.sampler().watch(level.hold_s());
    }
    station.back(step);
  }
}
