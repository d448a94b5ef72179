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

/** Waves that are written down, of an input that falls at 1 V/s from 10.5 V after 0.2 s. */
class FallingTest {
  private static final double FLOOR_V = 9;
  private static final double RATE_HZ = 10e3;

  private static double input(double t) {
    return 10.5 - Math.max(0, t - 0.2);
  }

  /** In regulation down to an input; below it so many volts of output are lost a volt of input. */
  private static double output(double t, double to_V, double slope) {
    return 48 - slope * Math.max(0, to_V - input(t));
  }

  @Test
  void itHeldDownToWhereOnePercentIsLost() {
    Map<Quantity, Reading> read = read(1.5, t -> output(t, 9.8, 4.8), FallingTest::input);
    near(9.7, read, Quantity.HOLDS_TO); // 0.48 V are lost a tenth of a volt further down
    near(48 - 4.8 * (9.8 - 9.2), read, Quantity.FALLING_LOWEST);
  }

  @Test
  void whatHoldsAllTheWayHasNoSuchInput() {
    Map<Quantity, Reading> read = read(1.5, t -> 48, FallingTest::input);
    says("the output held all the way, with the input down to 9.2", read);
    near(48, read, Quantity.FALLING_LOWEST);
  }

  /** What the output does where the input is no longer tolerated says nothing about the unit. */
  @Test
  void belowTheZonesNothingIsConcluded() {
    Map<Quantity, Reading> read = read(2.2, t -> output(t, 8.95, 400), FallingTest::input);
    says("with the input down to 9.00", read);
    near(48, read, Quantity.FALLING_LOWEST);
    says("the input was below 9.0 V from the start", read(1.5, t -> 30, t -> input(t) - 1.6));
  }

  /** A dip of a second feed counts as one of the first. */
  @Test
  void theLowestFeedCounts() {
    Capture one = capture(1.5, t -> output(t, 9.8, 4.8), FallingTest::input);
    Capture.Feed second = new Capture.Feed("second", wave(1.5, t -> input(t) - 0.3));
    Capture two =
        new Capture(
            one.sampleRate_Hz(),
            one.output(),
            one.load(),
            List.of(one.feeds().get(0), second),
            one.inputCurrent(),
            one.gaps());
    near(9.4, METER.falling(rest(), two, FLOOR_V), Quantity.HOLDS_TO);
  }

  @Test
  void whatSagsUnderTheLoadAloneDidNotHoldAtAll() {
    Map<Quantity, Reading> read = read(1.5, t -> 46 * input(t) / 10.5, FallingTest::input);
    says("the output lay at 46.0 V under the load before the input fell", read);
    near(46 * 9.2 / 10.5, read, Quantity.FALLING_LOWEST);
  }

  private static final StepMeter METER =
      new StepMeter(
          new MeterSettings(Optional.empty(), Optional.empty(), Optional.of(48.0), Map.of()));

  private static Map<Quantity, Reading> read(
      double length_s, DoubleUnaryOperator output, DoubleUnaryOperator input) {
    return METER.falling(rest(), capture(length_s, output, input), FLOOR_V);
  }

  private static Capture rest() {
    return capture(0.2, t -> 48, t -> 10.5);
  }

  private static Capture capture(
      double length_s, DoubleUnaryOperator output, DoubleUnaryOperator input) {
    return new Capture(
        RATE_HZ,
        wave(length_s, output),
        Optional.empty(),
        List.of(new Capture.Feed("input", wave(length_s, input))),
        Optional.empty(),
        List.of());
  }

  private static Waveform wave(double length_s, DoubleUnaryOperator value) {
    int[] codes = new int[(int) Math.round(RATE_HZ * length_s)];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = (int) Math.round(value.applyAsDouble(i / RATE_HZ) / 0.001);
    }
    return Waveform.ofCodes(codes, 0.001, 0, Unit.VOLT);
  }

  private static void near(double truth, Map<Quantity, Reading> read, Quantity quantity) {
    Measurement m = read.get(quantity).measurement().orElseThrow();
    assertEquals(truth, m.value(), 0.01, quantity + " " + m);
    assertTrue(m.u() > 0, quantity + " has its uncertainty");
  }

  private static void says(String words, Map<Quantity, Reading> read) {
    Reading.NotMeasured none =
        assertInstanceOf(Reading.NotMeasured.class, read.get(Quantity.HOLDS_TO));
    assertTrue(none.reason().contains(words), none.reason());
  }
}
