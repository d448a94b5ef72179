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
  public void run(Step step, Station station) {
    station.levels().to(step.input_V(), step.inputLimit_A(), step.load_A());
    station.sampler().watch(BACK_S);
    Step.Pulses pulses = step.detail().pulses().orElseThrow();
    station
        .levels()
        .pulse(
            new Load.Pulses(
                step.load_A(),
                pulses.high_A(),
                pulses.width_s(),
                1 / pulses.rate_Hz(),
                (int) Math.ceil(step.hold_s() * pulses.rate_Hz())));
    station.fast(step);
    station.levels().steady();
    station.back(step);
  }
}
