package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Capture;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Steps that are no holds, against closed forms. */
class StepMeterTest {
  private static final StepMeter METER = new StepMeter(MeterSettings.defaults());
  private static final DoubleUnaryOperator NOTHING = t -> 0;

  private static Capture capture(
      double rate_Hz,
      double length_s,
      DoubleUnaryOperator output_V,
      DoubleUnaryOperator input_V,
      DoubleUnaryOperator current_A) {
    return new Capture(
        rate_Hz,
        wave(rate_Hz, length_s, output_V, 0.002, Unit.VOLT),
        Optional.empty(),
        List.of(new Capture.Feed("input", wave(rate_Hz, length_s, input_V, 0.001, Unit.VOLT))),
        Optional.of(wave(rate_Hz, length_s, current_A, 0.001, Unit.AMPERE)),
        List.of());
  }

  private static Waveform wave(
      double rate_Hz, double length_s, DoubleUnaryOperator value, double lsb, Unit unit) {
    int[] codes = new int[(int) Math.round(rate_Hz * length_s)];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = (int) Math.round(value.applyAsDouble(i / rate_Hz) / lsb);
    }
    return Waveform.ofCodes(codes, lsb, 0, unit);
  }

  private static Capture gapped(Capture c) {
    return new Capture(
        c.sampleRate_Hz(),
        c.output(),
        c.load(),
        c.feeds(),
        c.inputCurrent(),
        List.of(new Capture.Gap(c.size() / 2, 5)));
  }

  private static void within(double truth, Map<Quantity, Reading> read, Quantity quantity) {
    Measurement m = read.get(quantity).measurement().orElseThrow(() -> none(read, quantity));
    assertEquals(truth, m.value(), m.expanded(2) + 1e-12, quantity + " " + m);
  }

  private static AssertionError none(Map<Quantity, Reading> read, Quantity quantity) {
    return new AssertionError(quantity + ": " + read.get(quantity));
  }

  /** 1 − e^(−t/τ) takes τ·ln 9 from 10 to 90 %; 12 A for 10 ms are 1.44 A²s. */
  @Test
  void aStartOfAKnownCurveAndAPulseOfAKnownCharge() {
    double tau = 0.02;
    Map<Quantity, Reading> read =
        METER.start(
            capture(
                100e3,
                0.6,
                t -> t < 0.05 ? 0 : 48 * (1 - Math.exp(-(t - 0.05) / tau)),
                t -> 12.5,
                t -> t >= 0.05 && t < 0.06 ? 12 : 0));
    within(tau * Math.log(9), read, Quantity.START_RISE);
    within(12, read, Quantity.INRUSH);
    assertEquals(
        1.44,
        read.get(Quantity.INRUSH_I2T).measurement().orElseThrow().value(),
        1e-6,
        "12² × 10 ms");
    within(0, read, Quantity.START_OVERSHOOT);
  }

  @Test
  void anOvershootIsTakenFromTheLevelThatTheOutputEndsAt() {
    Map<Quantity, Reading> read =
        METER.start(
            capture(
                50e3,
                1,
                t -> t < 0.05 ? 0 : t < 0.1 ? 47 * (t - 0.05) / 0.05 : t < 0.12 ? 48.5 : 47,
                t -> 12.5,
                NOTHING));
    within(1.5, read, Quantity.START_OVERSHOOT);
  }

  @Test
  void aUnitThatNeverComesUpHasNoStart() {
    Map<Quantity, Reading> read = METER.start(capture(10e3, 0.6, NOTHING, t -> 12.5, NOTHING));
    assertInstanceOf(Reading.NotMeasured.class, read.get(Quantity.START_RISE));
  }

  /** A source in steps of 20 mV, 1 V/s; the output falls with 13.6 s and rises in 50 ms. */
  private static double stepped(double t) {
    double way = t < 0.3 ? 0 : t < 5.3 ? t - 0.3 : Math.max(0, 10.3 - t);
    return 10 - 0.02 * Math.floor(way / 0.02 + 1e-9);
  }

  @Test
  void theLockOutIsFoundWhereItWasPut() {
    double off_s = 0.3 + 2.4; // 7.6 V going down
    double on_s = 5.3 + 3.4; // 8.4 V coming up
    DoubleUnaryOperator output =
        t -> {
          if (t < off_s) {
            return 48;
          }
          double left = 48 * Math.exp(-(Math.min(t, on_s) - off_s) / 13.6);
          return t < on_s ? left : Math.min(48, left + (t - on_s) * 48 / 0.08);
        };
    Map<Quantity, Reading> read =
        METER.lockOut(capture(10e3, 10.6, output, StepMeterTest::stepped, NOTHING));
    within(7.6, read, Quantity.LOCK_OUT_OFF);
    within(8.4, read, Quantity.LOCK_OUT_ON);
    within(0.8, read, Quantity.LOCK_OUT_HYSTERESIS);
    assertTrue(
        read.get(Quantity.LOCK_OUT_OFF).measurement().orElseThrow().expanded(2) < 0.06,
        "the trade states 0.05 V");
  }

  /** A unit at rest lets the input through: that it follows the ramp is no turning on. */
  @Test
  void anOutputThatFollowsTheInputHasNotTurnedOn() {
    Map<Quantity, Reading> read =
        METER.lockOut(
            capture(
                10e3,
                10.6,
                t -> t < 2.7 ? 48 : Math.max(stepped(t) - 0.5, 48 * Math.exp(-(t - 2.7) / 0.4)),
                StepMeterTest::stepped,
                NOTHING));
    assertTrue(read.get(Quantity.LOCK_OUT_OFF).measurement().isPresent());
    assertEquals(
        Reading.none("the output did not come back while the input went up"),
        read.get(Quantity.LOCK_OUT_ON));
  }

  @Test
  void aUnitThatNeverLetsGoHasNoLockOut() {
    Map<Quantity, Reading> read =
        METER.lockOut(capture(10e3, 10.6, t -> 48, StepMeterTest::stepped, NOTHING));
    assertEquals(3, read.values().stream().filter(Reading.NotMeasured.class::isInstance).count());
  }

  @Test
  void theLinesGiveLowestHighestAndWhatLiesBetween() {
    List<Capture> levels =
        List.of(
            capture(10e3, 0.5, t -> t < 0.1 ? 40 : 47.9, t -> 9, NOTHING),
            capture(10e3, 0.5, t -> 48.0, t -> 12.5, NOTHING),
            capture(10e3, 0.5, t -> 48.1, t -> 16, NOTHING));
    Map<Quantity, Reading> read = METER.lines(levels);
    within(47.9, read, Quantity.LINE_LOWEST);
    within(48.1, read, Quantity.LINE_HIGHEST);
    within(0.2, read, Quantity.LINE_EFFECT);
    Map<Quantity, Reading> hole = METER.lines(List.of(levels.get(0), gapped(levels.get(1))));
    assertEquals(
        Reading.none("samples are missing in the step"),
        hole.get(Quantity.LINE_HIGHEST),
        "the level that was not read might have been the worst");
  }

  @Test
  void aDropAtTheHighestLineIsSeenInItsLowest() {
    Map<Quantity, Reading> read =
        METER.highLine(capture(10e3, 2, t -> t > 1 && t < 1.004 ? 45 : 48, t -> 16, NOTHING));
    within(45, read, Quantity.HIGH_LINE_LOWEST);
    assertEquals(48, read.get(Quantity.HIGH_LINE_OUTPUT).measurement().orElseThrow().value(), 0.01);
  }

  @Test
  void withoutAChannelOfTheCurrentThereIsNone() {
    Capture c = capture(10e3, 1, t -> 48, t -> 12.5, t -> 0.09);
    within(0.09, METER.quiescent(c), Quantity.NO_LOAD_CURRENT);
    Capture bare = new Capture(10e3, c.output(), c.load(), c.feeds(), Optional.empty(), List.of());
    assertEquals(
        Reading.none("the input current was not recorded"),
        METER.quiescent(bare).get(Quantity.NO_LOAD_CURRENT));
  }

  @Test
  void ofFiveCrankingsTheWorstCountsAndHowAlikeTheyAre() {
    List<Capture> five =
        java.util.stream.IntStream.range(0, 5)
            .mapToObj(
                i ->
                    capture(
                        10e3,
                        2.15,
                        t -> 47.5 - 0.05 * i - (i == 3 ? 0.1 * Math.max(0, t - 0.15) : 0),
                        t -> t < 0.1 ? 9.5 : i == 2 ? 10.1 : 10.3,
                        NOTHING))
            .toList();
    Map<Quantity, Reading> read = METER.crank(five, CrankAsked.STEADY);
    within(47.25, read, Quantity.CRANK_OUTPUT); // the fourth: 47.35 − 0.1 V/s · 1 s
    within(47.15, read, Quantity.CRANK_LOWEST);
    within(-6, read, Quantity.CRANK_DRIFT);
    within(0.25, read, Quantity.CRANK_SPREAD);
    assertEquals(
        List.of("One by one they held 47.5, 47.5, 47.4, 47.3, 47.3 V."),
        flags(read.get(Quantity.CRANK_SPREAD)));
    within(10.1, read, Quantity.CRANK_INPUT); // the way there, at 9.5 V, is not judged
    assertEquals(
        5,
        METER.crank(List.of(five.get(0), gapped(five.get(1))), CrankAsked.STEADY).values().stream()
            .filter(Reading.NotMeasured.class::isInstance)
            .count(),
        "the one that was not read might have been the worst");
  }

  /** 2 V deep and 0.4 ms wide, 20 a second; the input swings by 0.4 V at 10 Hz. */
  @Test
  void whileCrankingTheDipsCountAndWhoDidNotDoItIsNamed() {
    DoubleUnaryOperator events = t -> t % 0.05 < 0.0004 ? 1 : 0;
    DoubleUnaryOperator output = t -> 47.5 - 2 * events.applyAsDouble(t);
    DoubleUnaryOperator input = t -> 10.4 + 0.2 * Math.sin(2 * Math.PI * 10 * t);
    Optional<PulsesAsked> asked = Optional.of(new PulsesAsked(1, 10, 0.0004, 20));
    CrankAsked all = new CrankAsked(asked, List.of(Optional.of(new CrankAsked.Swing(0.4, 10))));
    Capture done = cranked(output, input, t -> 1 + 9 * events.applyAsDouble(t));
    Map<Quantity, Reading> read = METER.crank(List.of(done, done), all);
    within(45.5, read, Quantity.CRANK_LOWEST); // a mean of 1 ms would read 46.7
    within(47.5 - 2 * 0.0004 * 20, read, Quantity.CRANK_OUTPUT);
    within(10.2, read, Quantity.CRANK_INPUT);
    assertEquals(List.of(), flags(read.get(Quantity.CRANK_OUTPUT)));

    Capture flat = cranked(output, t -> 10.4, t -> 1 + 9 * events.applyAsDouble(t));
    assertEquals(
        List.of(
            "The input swung by 0.00 V from crest to trough, and 0.40 V were asked: look at the"
                + " source."),
        flags(METER.crank(List.of(done, flat), all).get(Quantity.CRANK_LOWEST)));

    Capture half = cranked(output, input, t -> 1 + 4.5 * events.applyAsDouble(t));
    String none = METER.crank(List.of(done, half), all).get(Quantity.CRANK_LOWEST).toString();
    assertTrue(none.contains("took 32.") && none.contains("64.8 mC were asked"), none);
  }

  /** The input is down from 0.1 to 0.6 s; the output falls with it and comes back 0.05 s later. */
  @Test
  void throughADeepCrankingItIsToldHowLongTheOutputWasAway() {
    DoubleUnaryOperator input = t -> t < 0.1 || t >= 0.6 ? 12.5 : t < 0.13 ? 6.5 : 8;
    DoubleUnaryOperator output = t -> t < 0.2 || t >= 0.65 ? 48 : 46;
    Map<Quantity, Reading> read = METER.survival(capture(10e3, 1, output, input, NOTHING));
    within(46, read, Quantity.SURVIVAL_LOWEST);
    within(0.45, read, Quantity.SURVIVAL_OUT);
    within(0.05, read, Quantity.SURVIVAL_BACK);

    Map<Quantity, Reading> held = METER.survival(capture(10e3, 1, t -> 48, input, NOTHING));
    within(48, held, Quantity.SURVIVAL_LOWEST);
    within(0, held, Quantity.SURVIVAL_OUT);
    within(0, held, Quantity.SURVIVAL_BACK);

    assertEquals(
        Reading.none(
            "the output had not come back 0.4 s after the input: it latches off, or starts late"),
        METER
            .survival(capture(10e3, 1, t -> t < 0.2 ? 48 : 46, input, NOTHING))
            .get(Quantity.SURVIVAL_BACK));
    assertEquals(
        Reading.none("the input did not fall"),
        METER.survival(capture(10e3, 1, output, t -> 12.5, NOTHING)).get(Quantity.SURVIVAL_OUT));
  }

  private static List<String> flags(Reading reading) {
    return ((Reading.Measured) reading).flags();
  }

  private static Capture cranked(
      DoubleUnaryOperator output, DoubleUnaryOperator input, DoubleUnaryOperator load) {
    Capture c = capture(100e3, 1.05, output, input, NOTHING);
    Capture l = capture(100e3, 1.05, load, input, NOTHING);
    return new Capture(
        100e3, c.output(), Optional.of(l.output()), c.feeds(), Optional.empty(), List.of());
  }

  /** V·e^(−t/τ) is at half after τ·ln 2, whether the record lasts so long or not. */
  @Test
  void halfOfTheOutputIsFoundInTheRecordOrByItsTimeConstant() {
    double tau = 13.6;
    DoubleUnaryOperator falling = t -> 48 * Math.exp(-Math.max(0, t - 0.02) / tau);
    within(
        tau * Math.log(2) + 0.02,
        METER.decay(capture(1e3, 12, falling, NOTHING, NOTHING)),
        Quantity.DECAY_HALF);
    Map<Quantity, Reading> early = METER.decay(capture(1e3, 5, falling, NOTHING, NOTHING));
    assertEquals(
        tau * Math.log(2) + 0.02,
        early.get(Quantity.DECAY_HALF).measurement().orElseThrow().value(),
        0.01);
    assertInstanceOf(
        Reading.NotMeasured.class,
        METER.decay(capture(1e3, 1, falling, NOTHING, NOTHING)).get(Quantity.DECAY_HALF));
  }

  @Test
  void theDriftOfAThermalRunIsWhatLiesBetweenItsEnds() {
    Map<Quantity, Reading> read =
        METER.thermal(
            capture(1e3, 20.15, t -> 48 - 0.02 * Math.max(0, t - 0.15), t -> 12.5, NOTHING));
    within(-0.36, read, Quantity.THERMAL_DRIFT); // nine tenths of 0.4 V
  }

  /** A capacitor emptied by triangles and filled by a constant current: all of it closed form. */
  private static final PulseSeries PULSES = new PulseSeries(2000e-6, 0.015, 20, 0.4e-3, 440);

  private static Map<Quantity, Reading> pulses(double high_A, double rate_Hz) {
    // a triangle takes half of what the rectangle round it would
    return new StepMeter(
            new MeterSettings(Optional.of(0.1), Optional.empty(), Optional.of(48.0), Map.of()))
        .pulses(
            PULSES.capture(200e3, 0.6, 0.003, 0.0015, 5),
            new PulsesAsked(0, high_A, 0.4e-3, rate_Hz));
  }

  @Test
  void pulsesAreReadAsTheyWereMade() {
    Map<Quantity, Reading> read = pulses(10, 440);
    within(440, read, Quantity.PULSED_RATE);
    within(PULSES.dip_V(), read, Quantity.PULSED_DIP);
    within(2000e-6, read, Quantity.PULSED_CAPACITANCE);
    within(0.015, read, Quantity.PULSED_ESR);
    // filled by Q·f/C = 0.88 V/ms: back within 0.48 V when all but 0.48 V of the gap is filled
    double fills_VperS = PULSES.charge() * 440 / 2000e-6;
    within(1 / 440.0 - 0.4e-3 - 0.48 / fills_VperS, read, Quantity.PULSED_RECOVERY);
    // the mean over a period of what is stored, less the resistance times the mean current
    double q_V = PULSES.charge() / 2000e-6;
    double mean_V = PulseSeries.LEVEL_V - q_V / 2 + q_V * 2 / 3 * 0.4e-3 * 440;
    double drop_V = PULSES.charge() * 440 * 0.015;
    near(mean_V - drop_V, read, Quantity.PULSED_OUTPUT, 0.002);
  }

  @Test
  void aLoadThatDoesNotDoWhatItWasToldIsNotTakenForTheUnit() {
    says(" mC, and 3.20 mC were asked", pulses(8, 440).get(Quantity.PULSED_DIP));
    says("and 400.0 Hz were asked", pulses(10, 400).get(Quantity.PULSED_DIP));
    Capture still = capture(200e3, 0.6, t -> 48, t -> 12.5, NOTHING);
    says("load was not recorded", METER.pulses(still, new PulsesAsked(0, 10, 4e-4, 440)));
  }

  /** A sine of 65 kHz through a pole at 300 kHz: 1/√(1 + (65/300)²) of it is left. */
  @Test
  void aBurstStatesTheRippleInItsBandwidth() {
    double left = 1 / Math.sqrt(1 + Math.pow(65.0 / 300, 2));
    Map<Quantity, Reading> read =
        METER.burst(
            capture(
                1.5e6, 0.05, t -> 48 + 0.1 * Math.sin(2 * Math.PI * 65e3 * t), t -> 12.5, NOTHING));
    within(65e3, read, Quantity.BURST_FUNDAMENTAL);
    near(0.1 * left / Math.sqrt(2), read, Quantity.BURST_RMS, 0.0005);
    near(0.2 * left, read, Quantity.BURST_PEAK_TO_PEAK, 0.004);
    says(
        "five times the stated bandwidth",
        METER.burst(capture(1e6, 0.05, t -> 48, t -> 12.5, NOTHING)).get(Quantity.BURST_RMS));
  }

  private static void near(double truth, Map<Quantity, Reading> read, Quantity quantity, double d) {
    Measurement m = read.get(quantity).measurement().orElseThrow(() -> none(read, quantity));
    assertEquals(truth, m.value(), d, quantity + " " + m);
  }

  private static void says(String words, Map<Quantity, Reading> all) {
    all.values().forEach(reading -> says(words, reading));
  }

  private static void says(String words, Reading reading) {
    String reason = assertInstanceOf(Reading.NotMeasured.class, reading).reason();
    assertTrue(reason.contains(words), reason);
  }
}
