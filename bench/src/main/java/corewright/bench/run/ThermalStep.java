package corewright.bench.run;

import corewright.profiles.Step;

/**
 * A load until the case no longer warms, or for as long as the step says.
 *
 * @see "common practice, no source: until it changes by less than 0.5 K a minute, or 15 min"
 */
final class ThermalStep implements StepKind {
  private static final double STEADY_K = 0.5;
  private static final double OVER_S = 60;

  /** Between two looks at the thermometer's readings, s. */
  private static final double TICK_S = 1;

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return BACK_S + step.hold_s();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    station.levels().to(step.input_V(), step.inputLimit_A(), step.load_A());
    ByHand.wait(step, station);
    station.segment(step, most_s(step, station.context().plan()));
    double from_s = station.sampler().at_s();
    double until_s = from_s + step.hold_s();
    boolean steady = false;
    while (!steady && station.sampler().at_s() < until_s) {
      station.sampler().watch(Math.min(TICK_S, until_s - station.sampler().at_s()));
      double now_s = station.sampler().at_s();
      steady =
          now_s - from_s > 2 * OVER_S
              && station.aids().warmed(now_s - OVER_S, now_s).filter(k -> k < STEADY_K).isPresent();
    }
    station.aids().warming(from_s, station.sampler().at_s());
    station.back(step);
  }
}
