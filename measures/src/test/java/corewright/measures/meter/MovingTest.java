package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Synthetic;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What the output does during a hold, against closed forms and the events of the captures. */
class MovingTest {
  private static final double RATE = 1000;
  private static final double LENGTH_S = 20;

  @Test
  void aSlopeIsNotPulledByExcursionsThatPullTheLeastSquares() {
    // 0.3 V/min, and the output pulled down by 1 V for a tenth of the time, near the end.
    MeasuredHold hold = hold(t -> 48 + 0.005 * t - (t > 17 && t < 19 ? 1 : 0), 0.01);
    within(0.3, hold, Quantity.DRIFT_ROBUST, 0.1);
    assertTrue(hold.value(Quantity.DRIFT).orElseThrow().value() < -0.5);
  }

  @Test
  void anIntermittentJointIsCounted() {
    MeasuredHold hold = hold(t -> 48 - (t > 8 && t < 12 ? 0.1 : 0), 0.02);
    assertEquals(2, hold.value(Quantity.OUTPUT_STEPS).orElseThrow().value());
    Measurement largest = hold.value(Quantity.LARGEST_STEP).orElseThrow();
    assertEquals(0.1, Math.abs(largest.value()), largest.expanded(2));
  }

  @Test
  void aSteadyOutputHasNoSteps() {
    MeasuredHold hold = hold(t -> 48 - 0.001 * t, 0.02);
    assertEquals(0, hold.value(Quantity.OUTPUT_STEPS).orElseThrow().value());
    says("does not step", hold, Quantity.LARGEST_STEP);
  }

  /** Nothing switches in these two circuits while a hold lasts; what drifts is one or two codes. */
  @Test
  void aQuietRecordThatDriftsByACodeHasNoSteps() {
    for (String name : List.of("healthy_avg", "ilim_low_avg")) {
      RecordedCapture record = RecordedCapture.of(name);
      for (MeasuredHold hold : RunMeter.read(record.capture, record.settings()).holds()) {
        assertEquals(0, hold.value(Quantity.OUTPUT_STEPS).orElseThrow().value(), name + hold);
      }
    }
    MeasuredHold jumping = hold(t -> 48 - 0.0007 * t - (t > 8 ? 0.1 : 0), 0);
    assertEquals(1, jumping.value(Quantity.OUTPUT_STEPS).orElseThrow().value());
    assertEquals(
        0, hold(t -> 48 - 0.0007 * t, 0).value(Quantity.OUTPUT_STEPS).orElseThrow().value());
  }

  @Test
  void warmingUpHasItsTimeConstant() {
    MeasuredHold hold = hold(t -> 48 - 0.5 * (1 - Math.exp(-t / 4)), 0.005);
    within(4, hold, Quantity.THERMAL_TIME_CONSTANT, 0.1);
    says("warms up", hold(t -> 48 - 0.01 * t, 0.005), Quantity.THERMAL_TIME_CONSTANT);
    says("warms up", hold(t -> 48, 0.005), Quantity.THERMAL_TIME_CONSTANT);
  }

  @Test
  void anOutputThatGivesWayForGoodCollapses() {
    MeasuredHold hold = hold(t -> t < 12.3 ? 48 : 48 - 4 * (t - 12.3), 0.02);
    // 5 % of 48 V are lost 0.6 s after it begins to fall.
    Measurement after = hold.value(Quantity.COLLAPSE).orElseThrow();
    assertEquals(12.9, after.value(), 0.02);
    says("in regulation", hold(t -> t > 5 && t < 6 ? 40 : 48, 0.02), Quantity.COLLAPSE);
  }

  @Test
  void theInputIsReadWhereTheOutputCollapses() {
    Synthetic.Signal falling = new Synthetic.Signal(t -> 12 - 0.3 * t, 0.005, 0.005);
    MeasuredHold hold =
        hold(new Synthetic.Signal(t -> t < 10 ? 48 : 48 - 20 * (t - 10), 0.01, 0.005), falling);
    assertEquals(
        12 - 0.3 * 10.12, hold.value(Quantity.INPUT_AT_COLLAPSE).orElseThrow().value(), 0.02);
  }

  @Test
  void lineRegulationIsWhatTheOutputDoesOverTheRangeOfTheInput() {
    Synthetic.Signal falling = new Synthetic.Signal(t -> 16 - 0.35 * t, 0.005, 0.005);
    // 47.95 V at 9 V and 48.05 V at 16 V are 0.208333 % of 48 V (worked example of the trade).
    DoubleUnaryOperator output = t -> 47.95 + (7 - 0.35 * t) / 70;
    MeasuredHold hold = hold(new Synthetic.Signal(output, 0.002, 0.002), falling);
    double range = (hold.windowEnd_s() - hold.windowStart_s()) / LENGTH_S;
    Measurement line = hold.value(Quantity.LINE_REGULATION).orElseThrow();
    assertEquals(0.208333 * range, line.value(), line.expanded(2) + 0.002);
    says("less than 5 %", hold(t -> 48, 0.01), Quantity.LINE_REGULATION);
  }

  @Test
  void hiccupsHaveTheirPeriod() {
    RecordedCapture record = RecordedCapture.of("hiccup_avg");
    MeasuredRun run = RunMeter.read(record.capture, record.settings());
    double period_s = record.truth.at("/truth/events/hiccup_period_s").asDouble();
    Measurement read = run.holds().get(4).value(Quantity.HICCUP_PERIOD).orElseThrow();
    assertEquals(period_s, read.value(), read.expanded(2));
    assertTrue(read.expanded(2) < 0.01 * period_s, "all periods are nearly alike: " + read);
    says("restarts", run.holds().get(4), Quantity.OUTPUT_STEPS);
    says("does not restart", run.holds().get(3), Quantity.HICCUP_PERIOD);
  }

  @Test
  void regulationIsLostBetweenTwoLoads() {
    RecordedCapture record = RecordedCapture.of("ilim_low_avg");
    MeasuredRun run = RunMeter.read(record.capture, record.settings());
    assertEquals(
        2.5, run.reading(Quantity.REGULATION_LOST).measurement().orElseThrow().value(), 1e-3);
    RecordedCapture healthy = RecordedCapture.of("healthy_avg");
    assertInstanceOf(
        Reading.NotMeasured.class,
        RunMeter.read(healthy.capture, healthy.settings()).reading(Quantity.REGULATION_LOST));
  }

  @Test
  void aStartHasItsRiseItsOvershootAndItsInrush() {
    // A first-order rise: 10 to 90 % take ln 9 = 2.197224577 time constants.
    double tau = 0.03;
    Synthetic.Signal rising =
        new Synthetic.Signal(t -> t < 0.5 ? 0 : 48 * (1 - Math.exp(-(t - 0.5) / tau)), 0, 0.001);
    Synthetic.Signal current =
        new Synthetic.Signal(t -> t < 0.5 ? 0 : 10 * Math.exp(-(t - 0.5) / 0.1), 0, 0.001);
    Capture plain = capture(rising, Synthetic.exactly(12));
    Capture inrush = capture(current, Synthetic.exactly(12));
    Capture whole =
        new Capture(
            RATE,
            plain.output(),
            plain.load(),
            plain.feeds(),
            Optional.of(inrush.output()),
            List.of());
    MeasuredRun run = RunMeter.read(whole, settings());
    assertEquals(
        2.197224577 * tau,
        run.reading(Quantity.START_RISE).measurement().orElseThrow().value(),
        1e-3);
    assertEquals(
        0, run.reading(Quantity.START_OVERSHOOT).measurement().orElseThrow().value(), 2e-3);
    assertEquals(10, run.reading(Quantity.INRUSH).measurement().orElseThrow().value(), 0.01);
    // ∫ (10 e^(−t/0.1))² dt is 5 A²s over all time, sampled at its left ends.
    double part = 1 - Math.exp(-2 * (Math.log(20) * tau + 3 * 2.197224577 * tau) / 0.1);
    assertEquals(
        5 * part, run.reading(Quantity.INRUSH_I2T).measurement().orElseThrow().value(), 0.06);
  }

  static MeasuredHold hold(DoubleUnaryOperator output, double noise_V) {
    return hold(new Synthetic.Signal(output, noise_V, 0.005), Synthetic.exactly(12));
  }

  private static MeasuredHold hold(Synthetic.Signal output, Synthetic.Signal input) {
    return RunMeter.read(capture(output, input), settings()).holds().get(0);
  }

  private static Capture capture(Synthetic.Signal output, Synthetic.Signal input) {
    return Synthetic.capture(RATE, LENGTH_S, Synthetic.exactly(1), output, input, 7);
  }

  private static MeterSettings settings() {
    return new MeterSettings(Optional.of(0.5), Optional.of(0.02), Optional.of(48.0), Map.of());
  }

  private static void within(double truth, MeasuredHold hold, Quantity quantity, double part) {
    Measurement read = hold.value(quantity).orElseThrow();
    assertEquals(truth, read.value(), read.expanded(2), quantity + " " + read);
    assertTrue(read.expanded(2) <= part * truth, quantity + " is too uncertain: " + read);
  }

  private static void says(String words, MeasuredHold hold, Quantity quantity) {
    Reading reading = hold.readings().get(quantity);
    String reason = assertInstanceOf(Reading.NotMeasured.class, reading, quantity.id()).reason();
    assertTrue(reason.contains(words), reason);
  }
}
