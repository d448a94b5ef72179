package corewright.bench.run;

import corewright.bench.capture.StoredCapture;
import corewright.bench.record.RunEnd;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.measures.Capture;
import corewright.measures.ChannelDoubt;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.meter.CrankAsked;
import corewright.measures.meter.PulsesAsked;
import corewright.measures.meter.StepMeter;
import corewright.profiles.Step;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the steps of a run that are no holds came to, read from its sealed capture. */
final class StepReadings {
  private final StoredCapture capture;
  private final StepMeter meter;
  private final LeftOpen open;

  private StepReadings(StoredCapture capture, StepMeter meter, LeftOpen open) {
    this.open = open;
    this.capture = capture;
    this.meter = meter;
  }

  /** Every reading of every such step; where the run ended before, why there is none. */
  static Map<Quantity, Reading> of(StoredCapture capture, RunPlan plan, LeftOpen open) {
    Map<String, ChannelDoubt> doubts =
        plan.bench().channels().stream()
            .collect(
                Collectors.toMap(
                    ChannelCalibration::channel, c -> new ChannelDoubt(c.gain_rel(), c.offset())));
    MeterSettings settings =
        new MeterSettings(
                plan.profile().settle_s(),
                Optional.empty(),
                Optional.of(plan.family().output_V()),
                doubts)
            .withCircuit(Optional.of(plan.family().switching_Hz()), Optional.empty());
    StepReadings of = new StepReadings(capture, new StepMeter(settings), open);
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    for (Step step : plan.profile().steps()) {
      Reading none = Reading.none("the run ended before this step was over.");
      step.yields().stream()
          .filter(quantity -> quantity != Quantity.CASE_RISE || !of.isWhole(step))
          .forEach(quantity -> readings.put(quantity, none));
      if (!step.yields().isEmpty() && of.isWhole(step)) {
        readings.putAll(of.read(step));
      }
      readings.putAll(of.slower(step));
    }
    readings.putAll(open.readings());
    return readings;
  }

  private boolean isWhole(Step step) {
    Optional<String> endedIn =
        capture.end().filter(e -> e.kind() != RunEnd.Kind.COMPLETED).map(RunEnd::step);
    return capture.end().isPresent()
        && !endedIn.equals(Optional.of(step.id()))
        && !captures(step).isEmpty();
  }

  private Map<Quantity, Reading> read(Step step) {
    List<Capture> all = captures(step);
    Capture last = all.get(all.size() - 1);
    return switch (step.kind()) {
      case START -> meter.start(last);
      case QUIESCENT -> meter.quiescent(last);
      case LINES -> meter.lines(all);
      case LOCK_OUT -> meter.lockOut(last);
      case FALLING -> meter.falling(all.get(0), last, floor_V());
      case HIGH_LINE -> meter.highLine(last);
      case CRANK -> said(meter.crank(all, cranked(step)), open.without(step));
      case PULSES -> meter.pulses(last, asked(step));
      case BURST -> meter.burst(last);
      case SURVIVAL -> meter.survival(last);
      case THERMAL -> meter.thermal(last);
      case DECAY -> meter.decay(last);
      case BY_HAND, DEAD_CHECK, FIRST_POWER, HOLD, DISCHARGE -> Map.of();
    };
  }

  /** What load and source of this bench were told while they cranked. */
  private CrankAsked cranked(Step step) {
    boolean pulsed = !open.without(step).contains(CrankStep.NO_EVENTS);
    boolean swung = !open.without(step).contains(CrankStep.NO_SWING);
    return new CrankAsked(
        Optional.of(step).filter(s -> pulsed && s.detail().pulses().isPresent()).map(s -> asked(s)),
        step.detail().levels().stream()
            .filter(Step.Level::judged)
            .map(
                level ->
                    level
                        .swing()
                        .filter(s -> swung)
                        .map(s -> new CrankAsked.Swing(s.swing_Vpp(), s.rate_Hz())))
            .toList());
  }

  /** The same, with what a reader must know of them. */
  private static Map<Quantity, Reading> said(Map<Quantity, Reading> read, List<String> flags) {
    Map<Quantity, Reading> said = new EnumMap<>(read);
    said.replaceAll((quantity, reading) -> reading.flagged(flags));
    return said;
  }

  /** Below the highest edge of the feeds nothing is said about a unit. */
  private double floor_V() {
    return open.plan().profile().feeds().stream()
        .mapToDouble(feed -> feed.zones().tolerated_V())
        .max()
        .orElse(0);
  }

  private static PulsesAsked asked(Step step) {
    return asked(step, step.detail().pulses().orElseThrow().rate_Hz());
  }

  private static PulsesAsked asked(Step step, double rate_Hz) {
    Step.Pulses pulses = step.detail().pulses().orElseThrow();
    return new PulsesAsked(step.load_A(), pulses.high_A(), pulses.width_s(), rate_Hz);
  }

  /** Of pulses, the slower rates that were over: a weak unit may have ended the run in the next. */
  private Map<Quantity, Reading> slower(Step step) {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    List<Step.Slower> rates = step.detail().pulses().map(Step.Pulses::slower).orElse(List.of());
    List<Capture> all = rates.isEmpty() ? List.of() : captures(step);
    for (int i = 0; i < rates.size() && i + 1 < all.size(); i++) {
      Step.Slower rate = rates.get(i);
      Map<Quantity, Reading> read = meter.slowPulses(all.get(i), asked(step, rate.rate_Hz()));
      readings.put(rate.at().output(), read.get(Quantity.PULSED_OUTPUT));
      readings.put(rate.at().dip(), read.get(Quantity.PULSED_DIP));
    }
    return readings;
  }

  private List<Capture> captures(Step step) {
    return capture.each(s -> s.id().equals(step.id()) && s.kind().equals(StepKind.READ));
  }
}
