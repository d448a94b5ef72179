package corewright.measures.meter;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Waveform;
import corewright.measures.wave.PulseTrain;
import corewright.measures.wave.PulseTrain.Pulse;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A step in which the load pulses: what holds of a train of pulses anywhere, as readings of the
 * run. Where the load did not do what it was told nothing is read: a deep dip would then be the
 * load's.
 */
record PulsedStep(Channel output, Channel load, MeterSettings settings) {
  /** A load is no closer to the charge that it is told (common practice, no source). */
  private static final double SAME_CHARGE = 0.1;

  private static final double SAME_RATE = 0.02;

  /** Which reading of the train is which of the run. */
  private static final Map<Quantity, Quantity> AS =
      Map.of(
          Quantity.PULSE_RATE, Quantity.PULSED_RATE,
          Quantity.DIP, Quantity.PULSED_DIP,
          Quantity.DIP_SPREAD, Quantity.PULSED_DIP_SPREAD,
          Quantity.DIP_OUTLIERS, Quantity.PULSED_DIP_OUTLIERS,
          Quantity.DIP_ALTERNATION, Quantity.PULSED_ALTERNATION,
          Quantity.CAPACITANCE_FROM_CHARGE, Quantity.PULSED_CAPACITANCE,
          Quantity.ESR, Quantity.PULSED_ESR);

  static final Quantity[] ALL = {
    Quantity.PULSED_OUTPUT,
    Quantity.PULSED_RATE,
    Quantity.PULSED_DIP,
    Quantity.PULSED_DIP_SPREAD,
    Quantity.PULSED_DIP_OUTLIERS,
    Quantity.PULSED_ALTERNATION,
    Quantity.PULSED_RECOVERY,
    Quantity.PULSED_CAPACITANCE,
    Quantity.PULSED_ESR
  };

  /** What is read of a slower rate. */
  static final Quantity[] OF_LEVEL = {Quantity.PULSED_OUTPUT, Quantity.PULSED_DIP};

  /** The level and the dip alone: what the capacitors are like, the rated rate tells. */
  Map<Quantity, Reading> level(Window window, PulsesAsked asked) {
    if (window.unread().isPresent()) {
      return StepMeter.none(Reading.none(window.unread().get()), OF_LEVEL);
    }
    Readings readings = new Readings();
    PulseTrain train = train(window, readings);
    Optional<String> other = other(train, readings.measured(Quantity.PULSE_RATE), asked);
    return other.isPresent()
        ? StepMeter.none(Reading.none(other.get()), OF_LEVEL)
        : Map.of(
            Quantity.PULSED_OUTPUT,
            mean(output.level(window)),
            Quantity.PULSED_DIP,
            readings.all().get(Quantity.DIP));
  }

  private PulseTrain train(Window window, Readings readings) {
    PulseTrain train = PulseTrain.find(load.wave(), window.from(), window.to());
    Pulsed.read(output, Optional.of(train), window, output.level(window), readings);
    return train;
  }

  private Reading mean(Level level) {
    return new Reading.Measured(output.absolute(level.mean(), level.uMean()), List.of());
  }

  Map<Quantity, Reading> read(Window window, PulsesAsked asked) {
    if (window.unread().isPresent()) {
      return StepMeter.none(Reading.none(window.unread().get()), ALL);
    }
    Readings readings = new Readings();
    PulseTrain train = train(window, readings);
    Level level = output.level(window);
    Optional<String> other = other(train, readings.measured(Quantity.PULSE_RATE), asked);
    if (other.isPresent()) {
      return StepMeter.none(Reading.none(other.get()), ALL);
    }
    double period_s = settings.switching_Hz().map(f -> 1 / f).orElse(Double.POSITIVE_INFINITY);
    new Storage(output, load, asked.high_A()).read(window, window, train, period_s, readings);
    Map<Quantity, Reading> read = new EnumMap<>(Quantity.class);
    AS.forEach((ofTrain, ofRun) -> read.put(ofRun, readings.all().get(ofTrain)));
    read.put(Quantity.PULSED_OUTPUT, mean(level));
    read.put(
        Quantity.PULSED_RECOVERY,
        new PulseRecovery(output, period_s, settings.nominal_V().orElse(level.mean()))
            .read(window, train.pulses()));
    return read;
  }

  /** A sentence where the load did something else than it was told. */
  private Optional<String> other(PulseTrain train, Optional<Measurement> rate, PulsesAsked asked) {
    if (rate.isEmpty()) {
      return Optional.of(
          "the load was told to pulse, and "
              + train.pulses().size()
              + " pulses were seen: look at the load");
    }
    if (Math.abs(rate.get().value() - asked.rate_Hz()) > SAME_RATE * asked.rate_Hz()) {
      return Optional.of(
          "the load pulsed at "
              + Figures.withU(rate.get())
              + ", and "
              + Figures.number(asked.rate_Hz(), 1)
              + " Hz were asked: look at the load");
    }
    double drawn = charge_As(train);
    if (Math.abs(drawn - asked.charge_As()) > SAME_CHARGE * asked.charge_As()) {
      return Optional.of(
          "a pulse of the load took "
              + Figures.number(drawn * 1e3, 2)
              + " mC, and "
              + Figures.number(asked.charge_As() * 1e3, 2)
              + " mC were asked: look at the load");
    }
    return Optional.empty();
  }

  /** Of one pulse beyond the base, on the whole. */
  private double charge_As(PulseTrain train) {
    Waveform wave = load.wave();
    double sum = 0;
    for (Pulse pulse : train.pulses()) {
      for (int i = pulse.from(); i < pulse.to(); i++) {
        sum += wave.at(i) - train.base();
      }
    }
    return sum / load.sampleRate_Hz() / train.pulses().size();
  }
}
