package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Synthetic;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.wave.WindowStatistics;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of any record, on seeded ones: scaling, shifting, reversing, cutting. */
class PropertiesTest {
  private static final double RATE = 2000;
  private static final double HOLD_S = 1.5;
  private static final int HOLDS = 4;
  private static final double SETTLE_S = 0.2;

  /** In the output's volts, counted from its own levels. */
  private static final Set<Quantity> DIFFERENCES =
      EnumSet.of(
          Quantity.DROOP,
          Quantity.RIPPLE_PEAK_TO_PEAK,
          Quantity.RIPPLE_RMS,
          Quantity.RIPPLE_RMS_DETRENDED,
          Quantity.UNDERSHOOT,
          Quantity.OVERSHOOT,
          Quantity.DRIFT,
          Quantity.DRIFT_ROBUST);

  private static final Set<Quantity> LEVELS = EnumSet.of(Quantity.OUTPUT, Quantity.OUTPUT_MINIMUM);

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void scalingTheOutputScalesItsReadings(long seed) {
    double factor = 0.25 + 2 * new Random(seed).nextDouble();
    Capture capture = capture(seed);
    MeasuredRun one = read(capture, 48);
    MeasuredRun other = read(with(capture, factor, 0), 48 * factor);
    for (Quantity quantity : union()) {
      each(one, other, quantity, x -> x * factor, factor);
    }
    each(one, other, Quantity.RECOVERY, x -> x, 1);
  }

  @ParameterizedTest
  @ValueSource(longs = {5, 6, 7})
  void shiftingTheOutputShiftsItsLevelsAndNothingElse(long seed) {
    double shift = 10 * new Random(seed).nextGaussian();
    Capture capture = capture(seed);
    MeasuredRun one = read(capture, 48);
    MeasuredRun other = read(with(capture, 1, shift), 48);
    LEVELS.forEach(quantity -> each(one, other, quantity, x -> x + shift, 1));
    DIFFERENCES.forEach(quantity -> each(one, other, quantity, x -> x, 1));
    each(one, other, Quantity.RECOVERY, x -> x, 1);
  }

  /** A settled window read backwards: same mean, rms and peaks; the drift the other way. */
  @ParameterizedTest
  @ValueSource(longs = {9, 10, 11})
  void reversingTimeNegatesTheDriftAndNothingElse(long seed) {
    MeterSettings settings = settings(48, 0);
    Capture forwards = level(seed);
    int n = forwards.size();
    int[] codes = new int[n];
    for (int i = 0; i < n; i++) {
      codes[i] = forwards.output().codeAt(n - 1 - i);
    }
    Waveform wave = forwards.output();
    Capture backwards =
        with(forwards, Waveform.ofCodes(codes, wave.lsb(), wave.offset(), Unit.VOLT));
    MeasuredHold one = RunMeter.read(forwards, settings).holds().get(0);
    MeasuredHold other = RunMeter.read(backwards, settings).holds().get(0);
    for (Quantity same :
        List.of(Quantity.OUTPUT, Quantity.RIPPLE_RMS, Quantity.RIPPLE_PEAK_TO_PEAK)) {
      assertEquals(value(one, same), value(other, same), 1e-12, same.id());
    }
    for (Quantity turned : List.of(Quantity.DRIFT, Quantity.DRIFT_ROBUST)) {
      assertEquals(value(one, turned), -value(other, turned), 1e-9, turned.id());
    }
  }

  /** What lies before a hold's predecessor or after a hold says nothing of it. */
  @ParameterizedTest
  @ValueSource(longs = {12, 13, 14})
  void cuttingTheRecordLeavesTheHoldsThatAreWhole(long seed) {
    Capture capture = capture(seed);
    MeasuredRun whole = read(capture, 48);
    int keep = (int) ((2 + new Random(seed).nextDouble()) * HOLD_S * RATE);
    MeasuredRun cut = read(cut(capture, keep), 48);
    for (int h = 0; h < 2; h++) {
      MeasuredHold one = whole.holds().get(h);
      MeasuredHold other = cut.holds().get(h);
      for (Quantity quantity : union()) {
        if (one.value(quantity).isPresent()) {
          assertEquals(value(one, quantity), value(other, quantity), 1e-9, h + quantity.id());
        }
      }
    }
  }

  /** The sums of a window are those of its parts, wherever it is cut: integers lose nothing. */
  @ParameterizedTest
  @ValueSource(longs = {16, 17, 18})
  void theStatisticsOfPartsAreThoseOfTheWhole(long seed) {
    Random random = new Random(seed);
    int n = 1000 + random.nextInt(4000);
    int[] codes = new int[n];
    double squares = 0;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      codes[i] = (int) (1e5 + 3e4 * random.nextGaussian());
      sum += codes[i];
    }
    for (int code : codes) {
      squares += (code - sum / n) * (code - sum / n);
    }
    Waveform wave = Waveform.ofCodes(codes, 1, 0, Unit.VOLT);
    WindowStatistics whole = WindowStatistics.of(wave, 0, n);
    assertEquals(sum / n, whole.mean(), 1e-13 * whole.mean(), "plain double arithmetic");
    assertEquals(Math.sqrt(squares / n), whole.rms(), 1e-12 * whole.rms());
    int at = 1 + random.nextInt(n - 1);
    WindowStatistics one = WindowStatistics.of(wave, 0, at);
    WindowStatistics other = WindowStatistics.of(wave, at, n);
    assertEquals(
        whole.mean() * n, one.mean() * at + other.mean() * (n - at), 1e-13 * n * whole.mean());
  }

  private static Set<Quantity> union() {
    Set<Quantity> all = EnumSet.copyOf(LEVELS);
    all.addAll(DIFFERENCES);
    return all;
  }

  private static void each(
      MeasuredRun one,
      MeasuredRun other,
      Quantity quantity,
      DoubleUnaryOperator to,
      double scaleOfU) {
    for (int h = 0; h < HOLDS; h++) {
      Optional<Measurement> was = one.holds().get(h).value(quantity);
      Optional<Measurement> is = other.holds().get(h).value(quantity);
      assertEquals(was.isPresent(), is.isPresent(), h + quantity.id());
      if (was.isPresent()) {
        double expected = to.applyAsDouble(was.get().value());
        double u = was.get().u() * scaleOfU;
        assertEquals(expected, is.get().value(), 1e-9 * (1 + Math.abs(expected)), quantity.id());
        assertEquals(u, is.get().u(), 1e-6 * u + 1e-12, "u of " + quantity.id());
      }
    }
  }

  private static double value(MeasuredHold hold, Quantity quantity) {
    return hold.value(quantity).orElseThrow().value();
  }

  private static MeasuredRun read(Capture capture, double nominal_V) {
    return RunMeter.read(capture, settings(nominal_V, SETTLE_S));
  }

  private static MeterSettings settings(double nominal_V, double settle_s) {
    return new MeterSettings(
        Optional.of(settle_s), Optional.of(0.0), Optional.of(nominal_V), Map.of());
  }

  private static Capture capture(long seed) {
    Random random = new Random(seed);
    double[] starts = Synthetic.every(HOLD_S, HOLDS);
    double[] loads = {0, 1 + random.nextDouble(), 3 + random.nextDouble(), 1};
    double tau = 0.004 + 0.01 * random.nextDouble();
    double slope = 0.02 * random.nextGaussian();
    return Synthetic.capture(
        RATE,
        HOLD_S * HOLDS,
        new Synthetic.Signal(Synthetic.steps(starts, loads, 1e-9), 0.002, 0.001),
        new Synthetic.Signal(
            t -> {
              int k = Math.min(HOLDS - 1, (int) (t / HOLD_S + 1e-12));
              double since = t - k * HOLD_S;
              double step = k == 0 ? 0 : loads[k] - loads[k - 1];
              return 48 - 0.1 * loads[k] - step * Math.exp(-since / tau) + slope * since;
            },
            0.01,
            0.005),
        Synthetic.exactly(12),
        seed);
  }

  /** One hold with drift and noise. */
  private static Capture level(long seed) {
    double slope = 0.02 * new Random(seed).nextGaussian();
    return Synthetic.capture(
        RATE,
        3,
        Synthetic.exactly(1),
        new Synthetic.Signal(t -> 48 + slope * t, 0.01, 0.005),
        Synthetic.exactly(12),
        seed);
  }

  /** The output scaled, then shifted. */
  private static Capture with(Capture capture, double factor, double shift) {
    Waveform wave = capture.output();
    int[] codes = codes(wave, wave.size());
    return with(
        capture,
        Waveform.ofCodes(codes, wave.lsb() * factor, wave.offset() * factor + shift, Unit.VOLT));
  }

  private static Capture with(Capture capture, Waveform output) {
    return new Capture(
        capture.sampleRate_Hz(),
        output,
        capture.load(),
        capture.feeds(),
        capture.inputCurrent(),
        capture.gaps());
  }

  private static Capture cut(Capture capture, int keep) {
    Waveform feed = capture.feeds().get(0).voltage();
    return new Capture(
        capture.sampleRate_Hz(),
        cut(capture.output(), keep),
        capture.load().map(load -> cut(load, keep)),
        List.of(new Capture.Feed("input", cut(feed, keep))),
        Optional.empty(),
        List.of());
  }

  private static Waveform cut(Waveform wave, int keep) {
    return Waveform.ofCodes(codes(wave, keep), wave.lsb(), wave.offset(), wave.unit());
  }

  private static int[] codes(Waveform wave, int count) {
    int[] codes = new int[count];
    for (int i = 0; i < count; i++) {
      codes[i] = wave.codeAt(i);
    }
    return codes;
  }
}
