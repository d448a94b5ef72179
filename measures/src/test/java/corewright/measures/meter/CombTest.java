package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Synthetic;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The lines of the ripple, against the lines that were put in. */
class CombTest {
  private static final double RATE = 1e6;
  private static final double LINE_Hz = 101368.47;

  @Test
  void harmonicsSubharmonicAndDistortionAreWhatWasPutIn() {
    MeasuredHold hold = run(RATE, MeterSettings.defaults()).holds().get(0);
    near(0.02, hold, Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE, 0.002);
    near(0.008, hold, Quantity.RIPPLE_HARMONIC_2, 0.002);
    near(0.004, hold, Quantity.RIPPLE_HARMONIC_3, 0.002);
    near(15, hold, Quantity.RIPPLE_SUBHARMONIC, 0.02);
    near(100 * Math.hypot(0.008, 0.004) / 0.02, hold, Quantity.RIPPLE_DISTORTION, 0.02);
  }

  /** One pole: a line at f comes through with 1/√(1 + (f/f₀)²). */
  @Test
  void aStatedBandwidthTakesAwayWhatIsAboveIt() {
    double edge_Hz = 50e3;
    MeasuredHold hold =
        run(RATE, MeterSettings.defaults().withBandwidth(Optional.of(edge_Hz))).holds().get(0);
    double squares = 0;
    double[][] lines = {{0.5, 0.003}, {1, 0.02}, {2, 0.008}, {3, 0.004}};
    for (double[] line : lines) {
      double through = line[1] / Math.hypot(1, line[0] * LINE_Hz / edge_Hz);
      squares += through * through / 2;
    }
    // Joining samples by straight lines takes (sinc)² of each line: 3 % at a tenth of the rate.
    near(Math.sqrt(squares), hold, Quantity.RIPPLE_RMS_IN_BAND, 0.04);
    assertTrue(hold.value(Quantity.RIPPLE_PEAK_TO_PEAK_IN_BAND).orElseThrow().value() < 0.03);
    says(
        "five times",
        run(RATE, MeterSettings.defaults().withBandwidth(Optional.of(300e3))),
        Quantity.RIPPLE_RMS_IN_BAND);
    says("no bandwidth", run(RATE, MeterSettings.defaults()), Quantity.RIPPLE_RMS_IN_BAND);
  }

  @Test
  void aConverterThatSwitchesAboveHalfTheRateIsWarnedOf() {
    MeterSettings settings =
        MeterSettings.defaults().withCircuit(Optional.of(LINE_Hz), Optional.empty());
    MeasuredRun folded = run(150e3, settings);
    assertTrue(folded.notes().stream().anyMatch(n -> n.contains("above half the sample rate")));
    Reading.Measured line =
        assertInstanceOf(
            Reading.Measured.class,
            folded.holds().get(0).readings().get(Quantity.RIPPLE_FUNDAMENTAL));
    assertEquals(150e3 - LINE_Hz, line.value().value(), 1);
    assertTrue(line.flags().get(0).contains("folded"), line.toString());
    assertTrue(line.flags().get(1).contains("from the spectrum"), line.toString());
    assertEquals(0, run(RATE, settings).notes().stream().filter(n -> n.contains("half")).count());
  }

  /** Cramér and Rao: √(6/n)·σ/(A·π·T) and σ·√(2/n), with σ the noise and its rounding. */
  @Test
  void aLineAloneIsReadByTheSineFit() {
    Synthetic.Signal output =
        new Synthetic.Signal(t -> 48 + 0.02 * Math.sin(2 * Math.PI * LINE_Hz * t), 0.0005, 1e-4);
    MeasuredHold hold = run(RATE, MeterSettings.defaults(), output).holds().get(0);
    double n = 0.048 * RATE;
    double noise = Math.hypot(0.0005, 1e-4 / Math.sqrt(12));
    Measurement line = hold.value(Quantity.RIPPLE_FUNDAMENTAL).orElseThrow();
    assertEquals(LINE_Hz, line.value(), 3 * line.u());
    double bound_Hz = Math.sqrt(6 / n) * noise / 0.02 / (Math.PI * 0.048);
    assertEquals(1.1, line.u() / bound_Hz, 0.15);
    Measurement amplitude = hold.value(Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE).orElseThrow();
    assertEquals(0.02, amplitude.value(), 3 * amplitude.u());
    assertEquals(1.1, amplitude.u() / (noise * Math.sqrt(2 / n)), 0.15);
    Reading.Measured read =
        assertInstanceOf(Reading.Measured.class, hold.readings().get(Quantity.RIPPLE_FUNDAMENTAL));
    assertTrue(read.flags().get(0).contains("sine fit"), read.toString());
  }

  private static MeasuredRun run(double rate, MeterSettings settings) {
    double w = 2 * Math.PI * LINE_Hz;
    Synthetic.Signal output =
        new Synthetic.Signal(
            t ->
                48
                    + 0.02 * Math.sin(w * t)
                    + 0.008 * Math.sin(2 * w * t + 1)
                    + 0.004 * Math.sin(3 * w * t + 2)
                    + 0.003 * Math.sin(w * t / 2 + 3),
            0.0005,
            1e-4);
    return run(rate, settings, output);
  }

  private static MeasuredRun run(double rate, MeterSettings settings, Synthetic.Signal output) {
    return RunMeter.read(
        Synthetic.capture(rate, 0.05, Synthetic.exactly(1), output, Synthetic.exactly(12), 11),
        new MeterSettings(
            Optional.of(0.002),
            Optional.of(0.0),
            Optional.of(48.0),
            Map.of(),
            Optional.empty(),
            settings.switching_Hz(),
            settings.bandwidth_Hz(),
            Optional.empty()));
  }

  private static void near(double truth, MeasuredHold hold, Quantity quantity, double part) {
    Measurement read = hold.value(quantity).orElseThrow();
    assertEquals(truth, read.value(), part * truth + read.expanded(2), quantity + " " + read);
    assertTrue(read.expanded(2) <= 0.1 * truth, quantity + " is too uncertain: " + read);
  }

  private static void says(String words, MeasuredRun run, Quantity quantity) {
    Reading reading = run.holds().get(0).readings().get(quantity);
    String reason = assertInstanceOf(Reading.NotMeasured.class, reading).reason();
    assertTrue(reason.contains(words), reason);
  }
}
