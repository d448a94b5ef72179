package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.wave.PulseTrain;
import java.util.List;
import java.util.Optional;

/**
 * What the capacitors at the output hold, hold by hold: dips, capacitance, series resistance. Knows
 * the run as a whole: its largest load, its highest input, its regulated output.
 */
record Stored(
    Channel output,
    Optional<Channel> load,
    Channel feed,
    double largestLoad_A,
    double inputHigh_V,
    MeterSettings settings) {

  /** Needs ripple among {@code readings}: its period is averaged out. */
  void read(List<Window> windows, int index, Level level, Droop droop, Readings into) {
    Window window = windows.get(index);
    Window before = windows.get(Math.max(0, index - 1));
    Optional<PulseTrain> train =
        load.map(l -> PulseTrain.find(l.wave(), window.from(), window.to()));
    Pulsed.read(output, train, window, level, into);
    if (load.isEmpty() || window.gapped() || before.gapped()) {
      into.none(
          load.isEmpty() ? "the load was not recorded" : "samples are missing near the load edge",
          Quantity.CAPACITANCE_FROM_CHARGE,
          Quantity.ESR);
    } else {
      new Storage(output, load.get(), largestLoad_A)
          .read(window, before, train.orElseThrow(), period_s(into), into);
    }
    new Decay(output, load, feed, droop.reference().mean(), inputHigh_V, settings.discharge_ohm())
        .read(window, into);
  }

  /** Of the ripple: as declared, else as measured; infinite where there is none. */
  private double period_s(Readings readings) {
    return settings
        .switching_Hz()
        .or(() -> readings.measured(Quantity.RIPPLE_FUNDAMENTAL).map(Measurement::value))
        .map(frequency_Hz -> 1 / frequency_Hz)
        .orElse(Double.POSITIVE_INFINITY);
  }
}
