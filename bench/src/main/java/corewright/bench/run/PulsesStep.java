package corewright.bench.run;

import corewright.bench.port.Load;
import corewright.profiles.Step;
import java.util.Optional;

/** The load pulses by itself for a while; nothing but the digitizer looks at it meanwhile. */
final class PulsesStep implements FastStep {

  @Override
  public Optional<String> cannot(Step step, Abilities bench) {
    return bench.pulses()
        ? bench.tooSlow(step)
        : Optional.of("the load of this bench does not pulse by itself");
  }

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return FastStep.super.usual_s(step, plan)
        + step.detail().pulses().map(Step.Pulses::slower_s).orElse(0.0);
  }

  @Override
  public void run(Step step, Station station) {
    station.levels().to(step.input_V(), step.inputLimit_A(), step.load_A());
    station.sampler().watch(BACK_S);
    Step.Pulses pulses = step.detail().pulses().orElseThrow();
    for (Step.Slower slower : pulses.slower()) {
      at(slower.rate_Hz(), slower.hold_s(), step, station);
    }
    at(pulses.rate_Hz(), step.hold_s(), step, station);
    station.back(step);
  }

  /** One rate, read by itself. */
  private static void at(double rate_Hz, double hold_s, Step step, Station station) {
    Step.Pulses pulses = step.detail().pulses().orElseThrow();
    station
        .levels()
        .pulse(
            new Load.Pulses(
                step.load_A(),
                pulses.high_A(),
                pulses.width_s(),
                1 / rate_Hz,
                (int) Math.ceil(hold_s * rate_Hz)));
    station.fast(step, hold_s);
    station.levels().steady();
  }
}
