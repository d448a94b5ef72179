package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.ChannelDoubt;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.hold.Hold;
import corewright.measures.wave.Resolution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

  /**
   * The input went down under load.
   *
   * @param rest what the output was at without load before, which is the level it must keep
   * @param floor_V below this nothing is read, V
   */
  public Map<Quantity, Reading> falling(Capture rest, Capture capture, double floor_V) {
    if (!capture.gaps().isEmpty() || !rest.gaps().isEmpty()) {
      return none(GAP, Falling.ALL);
    }
    List<Channel> feeds =
        capture.feeds().stream().map(f -> channel(f.name(), f.voltage(), capture)).toList();
    Channel before = channel("output", rest.output(), rest);
    double level_V = Level.of(before, 0, rest.size()).mean();
    return new Falling(channel("output", capture.output(), capture), feeds, floor_V).read(level_V);
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

  /** The input fell deep and came back, without load. */
  public Map<Quantity, Reading> survival(Capture capture) {
    return capture.gaps().isEmpty()
        ? new Survival(channel("output", capture.output(), capture), feed(capture, 0)).read()
        : none(GAP, Survival.ALL);
  }

  /** One capture for each judged level of each repeat. */
  public Map<Quantity, Reading> crank(List<Capture> repeats, CrankAsked asked) {
    List<Cranking.Repeat> read = new ArrayList<>();
    Set<String> flags = new LinkedHashSet<>();
    for (Capture capture : repeats) {
      int from = from(capture);
      if (capture.size() - from < 3) {
        return none(Reading.none("the level was over before the output had settled"), Cranking.ALL);
      }
      if (!capture.gaps().isEmpty()) {
        return none(GAP, Cranking.ALL);
      }
      Optional<String> other = events(capture, from, asked);
      if (other.isPresent()) {
        return none(Reading.none(other.get()), Cranking.ALL);
      }
      asked
          .swing(read.size())
          .flatMap(s -> CrankDone.otherSwing(feed(capture, 0), s, from))
          .ifPresent(flags::add);
      read.add(repeat(capture, from, asked.events()));
    }
    double gain_rel = settings.doubts().getOrDefault("output", ChannelDoubt.UNKNOWN).gain_rel();
    Map<Quantity, Reading> readings = Cranking.read(read, gain_rel);
    readings.replaceAll((quantity, reading) -> reading.flagged(List.copyOf(flags)));
    return readings;
  }

  /** Why a dip that is read would be the load's. */
  private Optional<String> events(Capture capture, int from, CrankAsked asked) {
    if (asked.events().isPresent() && capture.load().isEmpty()) {
      return Optional.of("the load was not recorded");
    }
    return asked
        .events()
        .flatMap(
            e ->
                CrankDone.otherEvents(
                    channel("load", capture.load().orElseThrow(), capture), e, from));
  }

  private Channel feed(Capture capture, int index) {
    Capture.Feed feed = capture.feeds().get(index);
    return channel(feed.name(), feed.voltage(), capture);
  }

  private Cranking.Repeat repeat(Capture capture, int from, Optional<PulsesAsked> events) {
    Channel output = channel("output", capture.output(), capture);
    Level level = Level.of(output, from, capture.size());
    Window window = whole(capture, from);
    Readings drift = new Readings();
    Drift.read(output, window, level, drift);
    Measurement input =
        capture.feeds().stream()
            .map(f -> channel(f.name(), f.voltage(), capture))
            .map(feed -> FeedMeter.lowestMedian(feed, from, capture.size()))
            .min(Comparator.comparingDouble(Measurement::value))
            .orElseThrow();
    return new Cranking.Repeat(
        output.absolute(level.mean(), level.uMean()),
        level.uMean(),
        events
            .map(e -> Dip.lowest(output, from, e.width_s()))
            .orElseGet(() -> Overshoot.lowest(output, from).measurement().orElseThrow()),
        drift.measured(Quantity.DRIFT).orElse(new Measurement(0, 0, Unit.VOLT_PER_MINUTE)),
        input);
  }

  /** The load pulsed from {@code asked.low_A} to {@code asked.high_A} and back. */
  public Map<Quantity, Reading> pulses(Capture capture, PulsesAsked asked) {
    return unpulsed(capture)
        .map(why -> none(why, PulsedStep.ALL))
        .orElseGet(() -> pulsed(capture).read(whole(capture, from(capture)), asked));
  }

  /** A slower rate of the same pulses: the mean of the output and the dip, and nothing else. */
  public Map<Quantity, Reading> slowPulses(Capture capture, PulsesAsked asked) {
    return unpulsed(capture)
        .map(why -> none(why, PulsedStep.OF_LEVEL))
        .orElseGet(() -> pulsed(capture).level(whole(capture, from(capture)), asked));
  }

  private static Optional<Reading> unpulsed(Capture capture) {
    if (capture.load().isEmpty()) {
      return Optional.of(Reading.none("the load was not recorded"));
    }
    return capture.gaps().isEmpty() ? Optional.empty() : Optional.of(GAP);
  }

  private PulsedStep pulsed(Capture capture) {
    Channel output = channel("output", capture.output(), capture);
    Channel load = channel("load", capture.load().orElseThrow(), capture);
    return new PulsedStep(output, load, settings);
  }

  /** One load, sampled fast: the ripple in a stated bandwidth. */
  public Map<Quantity, Reading> burst(Capture capture) {
    if (!capture.gaps().isEmpty()) {
      return none(GAP, Burst.ALL);
    }
    Channel output = channel("output", capture.output(), capture);
    return Burst.read(output, whole(capture, 0), settings);
  }

  /** The input went away without load. */
  public Map<Quantity, Reading> decay(Capture capture) {
    return capture.gaps().isEmpty()
        ? HalfTime.read(channel("output", capture.output(), capture))
        : none(GAP, Quantity.DECAY_HALF);
  }

  /** A load for long: the last tenth of it against the first after settling. */
  public Map<Quantity, Reading> thermal(Capture capture) {
    int from = from(capture);
    int tenth = (capture.size() - from) / 10;
    if (tenth < 3 || !capture.gaps().isEmpty()) {
      return none(tenth < 3 ? Reading.none("the step was too short") : GAP, Quantity.THERMAL_DRIFT);
    }
    Channel output = channel("output", capture.output(), capture);
    Level first = Level.of(output, from, from + tenth);
    Level last = Level.of(output, capture.size() - tenth, capture.size());
    Measurement moved =
        output.difference(last.mean() - first.mean(), Root.of(first.uMean(), last.uMean()));
    return Map.of(Quantity.THERMAL_DRIFT, new Reading.Measured(moved, List.of()));
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

  /** All of a step from a sample on. */
  private static Window whole(Capture capture, int from) {
    double length_s = capture.size() / capture.sampleRate_Hz();
    return Window.of(new Hold(0, length_s, false, 0), from / capture.sampleRate_Hz(), 0, capture);
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
