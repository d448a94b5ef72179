package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.ChannelDoubt;
import corewright.measures.FeedReadings;
import corewright.measures.HoldBudget;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Waveform;
import corewright.measures.hold.Hold;
import corewright.measures.hold.HoldFinder;
import corewright.measures.uncertainty.Budget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a capture: finds its holds in the measured load current and takes every {@link Quantity} in
 * each of them. Pure; may be called from any thread.
 *
 * <p>A quantity is one entry here, one kernel behind it. Each reading carries its standard
 * uncertainty: scatter of correlated samples, resolution, and gain and offset where the settings
 * know them.
 */
public final class RunMeter {
  private static final Quantity[] OF_A_HOLD =
      Arrays.stream(Quantity.values()).filter(q -> !q.ofRun()).toArray(Quantity[]::new);

  /** No capture has these: an instrument beside the digitizer reads them. */
  private static final Quantity[] OF_THE_CASE = {
    Quantity.CASE_START, Quantity.CASE_END, Quantity.CASE_HIGHEST
  };

  private final Capture capture;
  private final MeterSettings settings;
  private final Channel output;
  private final Optional<Channel> load;
  private final Optional<Channel> inputCurrent;
  private final List<FeedMeter> feeds;

  private final List<Hold> holds;
  private final Settling settling;
  private final List<Window> windows;

  private RunMeter(Capture capture, MeterSettings settings) {
    this.capture = capture;
    this.settings = settings;
    holds =
        HoldFinder.find(capture, settings.settle_s().map(s -> s + settings.guard_s().orElse(0.0)));
    settling = Settling.of(settings, holds);
    windows =
        holds.stream()
            .map(h -> Window.of(h, settling.settle_s(), settling.guard_s(), capture))
            .toList();
    output = channel("output", capture.output());
    load = capture.load().map(wave -> channel("load", wave));
    inputCurrent = capture.inputCurrent().map(wave -> channel("inputCurrent", wave));
    feeds =
        capture.feeds().stream()
            .map(f -> new FeedMeter(f.name(), channel(f.name(), f.voltage())))
            .toList();
  }

  private Channel channel(String name, Waveform wave) {
    ChannelDoubt doubt = settings.doubts().getOrDefault(name, ChannelDoubt.UNKNOWN);
    return Channel.of(wave, capture.sampleRate_Hz(), doubt, windows);
  }

  /**
   * Reads every hold of a capture.
   *
   * @throws IllegalArgumentException if the capture is empty
   */
  public static MeasuredRun read(Capture capture, MeterSettings settings) {
    if (capture.size() == 0) {
      throw new IllegalArgumentException("the capture has no samples");
    }
    return new RunMeter(capture, settings).run();
  }

  /**
   * Budgets of the steady levels and droops of every hold that can be read, in order.
   *
   * @throws IllegalArgumentException if the capture is empty
   */
  public static List<HoldBudget> budgets(Capture capture, MeterSettings settings) {
    if (capture.size() == 0) {
      throw new IllegalArgumentException("the capture has no samples");
    }
    return new RunMeter(capture, settings).budgets();
  }

  private List<HoldBudget> budgets() {
    List<Optional<Level>> outputs = windows.stream().map(w -> level(output, w)).toList();
    List<Optional<Level>> loads =
        windows.stream().map(w -> load.flatMap(channel -> level(channel, w))).toList();
    Optional<Droop> droop = Droop.against(outputs, loads);
    List<HoldBudget> budgets = new ArrayList<>();
    for (int i = 0; i < windows.size(); i++) {
      if (outputs.get(i).isPresent()) {
        budget(i, Quantity.OUTPUT, output, budgets);
        if (droop.isPresent() && droop.get().index() != i) {
          Budget made = BudgetOf.droop(output, droop.get().reference(), outputs.get(i).get());
          budgets.add(new HoldBudget(i, Quantity.DROOP, made));
        }
        int hold = i;
        load.ifPresent(channel -> budget(hold, Quantity.LOAD, channel, budgets));
        budget(i, Quantity.INPUT, feeds.get(0).channel(), budgets);
        inputCurrent.ifPresent(channel -> budget(hold, Quantity.INPUT_CURRENT, channel, budgets));
      }
    }
    return budgets;
  }

  private void budget(int hold, Quantity quantity, Channel channel, List<HoldBudget> into) {
    Budget made = BudgetOf.level(channel, channel.level(windows.get(hold)));
    into.add(new HoldBudget(hold, quantity, made));
  }

  private MeasuredRun run() {
    List<Optional<Level>> outputs = windows.stream().map(w -> level(output, w)).toList();
    List<Optional<Level>> loads =
        windows.stream().map(w -> load.flatMap(channel -> level(channel, w))).toList();
    Optional<Droop> droop = Droop.against(outputs, loads);
    Stored stored =
        new Stored(
            output, load, feeds.get(0).channel(), largest(loads), highestInput_V(), settings);
    List<MeasuredHold> measured = new ArrayList<>();
    for (int i = 0; i < windows.size(); i++) {
      measured.add(hold(i, windows.get(i), outputs.get(i), loads.get(i), droop, stored));
    }
    return new MeasuredRun(
        capture.sampleRate_Hz(),
        capture.size(),
        Notes.uBasis(settings),
        measured,
        ofRun(outputs, loads, droop),
        notes());
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>(Notes.of(capture, holds, settings));
    notes.addAll(Sight.notes("output", output, windows));
    load.ifPresent(channel -> notes.addAll(Sight.notes("load", channel, windows)));
    feeds.forEach(feed -> notes.addAll(Sight.notes(feed.name(), feed.channel(), windows)));
    return notes;
  }

  private Map<Quantity, Reading> ofRun(
      List<Optional<Level>> outputs, List<Optional<Level>> loads, Optional<Droop> droop) {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    double nominal_V = droop.map(this::nominal).map(Nominal::value_V).orElse(0.0);
    readings.put(Quantity.OUTPUT_RESISTANCE, OutputSlope.read(outputs, loads, output, load));
    readings.put(Quantity.REGULATION_LOST, RegulationLost.read(outputs, loads, nominal_V));
    new Start(output, inputCurrent, nominal_V).read(readings);
    return readings;
  }

  private Nominal nominal(Droop droop) {
    return Nominal.of(settings.nominal_V(), droop.reference().mean());
  }

  private static double largest(List<Optional<Level>> levels) {
    return levels.stream().flatMap(Optional::stream).mapToDouble(Level::mean).max().orElse(0);
  }

  private double highestInput_V() {
    Channel feed = feeds.get(0).channel();
    return largest(windows.stream().map(w -> level(feed, w)).toList());
  }

  private static Optional<Level> level(Channel channel, Window window) {
    return window.unread().isPresent() ? Optional.empty() : Optional.of(channel.level(window));
  }

  private MeasuredHold hold(
      int index,
      Window window,
      Optional<Level> outputLevel,
      Optional<Level> loadLevel,
      Optional<Droop> droop,
      Stored stored) {
    Readings readings = new Readings();
    String recovery = "not_measured";
    readings.none(window.unread().orElse("the load was not recorded"), OF_A_HOLD);
    readings.none("no thermometer on the case was recorded", OF_THE_CASE);
    loadLevel.ifPresent(
        l -> readings.put(Quantity.LOAD, load.orElseThrow().absolute(l.mean(), l.uMean())));
    if (outputLevel.isPresent() && droop.isPresent()) {
      Level level = outputLevel.get();
      readings.put(Quantity.OUTPUT, output.absolute(level.mean(), level.uMean()));
      droop.get().read(index, output, level, readings);
      Ripple.read(output, window, level, settings, readings);
      Drift.read(output, window, level, readings);
      Moving.read(output, window, level, readings);
      double nominal_V = nominal(droop.get()).value_V();
      new Regulation(output, feeds.get(0).channel(), nominal_V).read(window, readings);
      Regulation.silence(readings);
      recovery = answer(index, level, droop.get(), readings);
      stored.read(windows, index, level, droop.get(), readings);
    }
    readings.put(Quantity.OUTPUT_MINIMUM, output.lowest(window));
    List<FeedReadings> fed = feeds.stream().map(feed -> feed.read(window)).toList();
    readings.put(Quantity.INPUT, fed.get(0).mean());
    readings.put(Quantity.INPUT_MINIMUM, fed.get(0).minimum());
    Supplied.read(inputCurrent, window, readings);
    TooSlow.strike(capture.sampleRate_Hz(), readings);
    return new MeasuredHold(
        index,
        window.hold().start_s(),
        window.hold().end_s(),
        window.from_s(),
        window.to_s(),
        new EnumMap<>(readings.all()),
        fed,
        recovery);
  }

  private String answer(int index, Level level, Droop droop, Readings readings) {
    Window window = windows.get(index);
    if (!window.hold().edge()) {
      readings.none("no load edge begins this hold", Answer.ALL);
      return "no_edge";
    }
    if (window.gapped()) {
      readings.none("samples are missing inside the hold", Answer.ALL);
      return "not_measured";
    }
    Window before = windows.get(index - 1); // where there is an edge there is one
    Answer.Bands bands = new Answer.Bands(nominal(droop), settings.band_V());
    return Answer.read(output, window, before, settling.settle_s(), level, bands, readings);
  }
}
