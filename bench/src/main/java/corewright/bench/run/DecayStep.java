package corewright.bench.run;

import corewright.profiles.Step;

/** The input taken away without load: the output runs down through what the unit itself draws. */
final class DecayStep implements StepKind {
  private static final double HALF = 0.5;

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
    station.levels().to(step.input_V(), step.inputLimit_A(), 0);
    station.sampler().watch(BACK_S);
    double half_V = HALF * Means.of(station.sampler().next(), "output");
    station.segment(step, most_s(step, station.context().plan()));
    station.levels().noFeed();
    double until_s = station.sampler().at_s() + step.hold_s();
    double output_V = 2 * half_V;
    while (output_V > 0.99 * half_V && station.sampler().at_s() < until_s) {
      output_V = Means.of(station.sampler().next(), "output");
    }
  }
}
