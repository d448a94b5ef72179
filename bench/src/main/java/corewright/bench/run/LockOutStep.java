package corewright.bench.run;

import corewright.profiles.Step;

/**
 * A slow ramp of the input, down to where the converter must have let go and back up, without load:
 * a loaded output would fall at once and end the run.
 */
final class LockOutStep implements StepKind {
  /** Before the ramp, for the level; after it, for the way back to the level. */
  private static final double AROUND_S = 0.3;

  private static final double TICK_S = 0.02;

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return 2 * (AROUND_S + down_s(step));
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    station.levels().to(step.input_V(), step.inputLimit_A(), 0);
    station.sampler().watch(AROUND_S);
    station.segment(step, most_s(step, station.context().plan()));
    station.sampler().watch(AROUND_S);
    int ticks = (int) Math.ceil(down_s(step) / TICK_S);
    for (int tick = 1; tick <= 2 * ticks; tick++) {
      double share = tick <= ticks ? tick : 2.0 * ticks - tick;
      double input_V = step.input_V() - (step.input_V() - step.detail().to_V()) * share / ticks;
      station.levels().source(input_V, step.inputLimit_A());
      station.sampler().watch(TICK_S);
    }
    station.sampler().watch(AROUND_S);
    station.back(step);
  }

  private static double down_s(Step step) {
    return (step.input_V() - step.detail().to_V()) / step.detail().ramp_VperS();
  }
}
