package corewright.bench.run;

import corewright.profiles.Step;

/** One load for a moment, sampled faster than anything else in the profile. */
final class BurstStep implements FastStep {

  @Override
  public void run(Step step, Station station) {
    station.levels().to(step.input_V(), step.inputLimit_A(), step.load_A());
    ByHand.wait(step, station);
    station.sampler().watch(BACK_S);
    station.fast(step);
    station.back(step);
  }
}
