package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.ChannelDoubt;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Waveform;
import corewright.measures.wave.Resolution;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads what was sampled in the steps of a run that are no holds. Each method takes what the step
 * left and gives every reading of its kind, or says why there is none. Pure.
 */
public final class StepMeter {
  private static final double SETTLE_S = 0.15;

  private static final Reading GAP = Reading.none("samples are missing in the step");

  private final MeterSettings settings;

  /**
   * @param settings settling time, nominal output and doubts are used
   */
  public StepMeter(MeterSettings settings) {
    this.settings = settings;
  }

  /** The source was off, then switched on; the output ends at its level. */
  public Map<Quantity, Reading> start(Capture capture) {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    if (!capture.gaps().isEmpty()) {
      return none(
          GAP, Quantity.START_RISE, Quantity.START_OVERSHOOT, Quantity.INRUSH, Quantity.INRUSH_I2T);
    }
    Channel output = channel("output", capture.output(), capture);
    Level settled = Level.of(output, 4 * capture.size() / 5, capture.size());
    new Start(output, current(capture), settled.mean()).read(readings);
    Optional<Measurement> raw =
        Optional.of(Quantity.START_RISE).map(readings::get).flatMap(Reading::measurement);
    raw.ifPresent(
        rise -> {
          readings.put(Quantity.START_RISE, Rise.of(output, rise, settled.mean()));
          readings.put(Quantity.START_OVERSHOOT, Overshoot.of(output, settled));
        });
    return readings;
  }

  /** Enabled and without load: what the unit itself draws. */
  public Map<Quantity, Reading> quiescent(Capture capture) {
    Optional<Channel> current = current(capture);
    if (current.isEmpty()) {
      return none(Reading.none("the input current was not recorded"), Quantity.NO_LOAD_CURRENT);
    }
    return Map.of(Quantity.NO_LOAD_CURRENT, settled(current.get(), capture));
  }

  /** One capture for each level of the input. */
  public Map<Quantity, Reading> lines(List<Capture> levels) {
    return Lines.read(
        levels.stream().map(c -> settled(channel("output", c.output(), c), c)).toList(),
        settings.doubts().getOrDefault("output", ChannelDoubt.UNKNOWN));
  }

  /** The input went down and came up again, without load. */
  public Map<Quantity, Reading> lockOut(Capture capture) {
    if (!capture.gaps().isEmpty()) {
      return none(GAP, Quantity.LOCK_OUT_OFF, Quantity.LOCK_OUT_ON, Quantity.LOCK_OUT_HYSTERESIS);
    }
    Capture.Feed feed = capture.feeds().get(0);
    return new LockOut(
            channel("output", capture.output(), capture),
            channel(feed.name(), feed.voltage(), capture))
        .read();
  }

  /** The highest input for a while: the level, and the lowest mean of 1 ms once settled. */
  public Map<Quantity, Reading> highLine(Capture capture) {
    Channel output = channel("output", capture.output(), capture);
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    readings.put(Quantity.HIGH_LINE_OUTPUT, settled(output, capture));
    readings.put(
        Quantity.HIGH_LINE_LOWEST,
        capture.gaps().isEmpty() ? Overshoot.lowest(output, from(capture)) : GAP);
    return readings;
  }

  private Reading settled(Channel channel, Capture capture) {
    int from = from(capture);
    if (capture.size() - from < 3) {
      return Reading.none("the step was over before the output had settled");
    }
    if (capture.gaps().stream().anyMatch(gap -> gap.touches(from, capture.size()))) {
      return GAP;
    }
    Level level = Level.of(channel, from, capture.size());
    Measurement made = channel.absolute(level.mean(), level.uMean());
    return new Reading.Measured(made, List.of());
  }

  private int from(Capture capture) {
    return (int) Math.round(settings.settle_s().orElse(SETTLE_S) * capture.sampleRate_Hz());
  }

  private Optional<Channel> current(Capture capture) {
    return capture.inputCurrent().map(wave -> channel("inputCurrent", wave, capture));
  }

  private Channel channel(String name, Waveform wave, Capture capture) {
    List<Resolution> seen = Resolution.of(wave, 0, wave.size()).map(List::of).orElse(List.of());
    return new Channel(
        wave,
        capture.sampleRate_Hz(),
        settings.doubts().getOrDefault(name, ChannelDoubt.UNKNOWN),
        Resolution.smallest(seen, wave));
  }

  static Map<Quantity, Reading> none(Reading why, Quantity... quantities) {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    for (Quantity quantity : quantities) {
      readings.put(quantity, why);
    }
    return readings;
  }
}
