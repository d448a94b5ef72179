package corewright.bench.run;

import corewright.bench.port.Meter;
import corewright.bench.port.Meter.Terminals;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.util.Optional;

/**
 * A second witness that the output is down: a channel that reads nothing may be one that is not
 * connected. Where there is no meter, the channel must have been seen live in the same run (prove,
 * test, prove).
 */
final class Witness {
  private static final double LIVE = 2;

  private final Optional<Meter> meter;
  private final Optional<Aside> aside;

  Witness(Optional<Meter> meter, Optional<Aside> aside) {
    this.meter = meter;
    this.aside = aside;
  }

  /** A sentence if the meter finds voltage at the output. */
  Optional<String> contradicts(StepKind.Station station) {
    if (meter.isEmpty() || aside.isEmpty()) {
      return Optional.empty();
    }
    Meter there = meter.get();
    Measurement read =
        AsideWait.until(
            aside
                .get()
                .ask(
                    () -> {
                      there.to(Terminals.OUTPUT);
                      return there.voltage();
                    }),
            station.sampler(),
            "meter");
    return Math.abs(read.value()) >= safe_V(station)
        ? Optional.of(
            "The meter finds "
                + Figures.withU(read)
                + " at the output, where the digitizer finds none.")
        : Optional.empty();
  }

  /** A sentence if nobody can tell a discharged unit from a channel that is not connected. */
  Optional<String> lacks(StepKind.Station station) {
    double live_V = LIVE * safe_V(station);
    return meter.isEmpty() && station.sampler().highestOutput_V() < live_V
        ? Optional.of(
            "The output never read more than "
                + Figures.number(live_V, 0)
                + " V in this run, and no meter is there: that the unit holds no charge is not"
                + " proved.")
        : Optional.empty();
  }

  private static double safe_V(StepKind.Station station) {
    return station.context().plan().family().discharge().safe_V();
  }
}
