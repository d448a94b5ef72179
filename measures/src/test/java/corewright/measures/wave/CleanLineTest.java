package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.spectrum.SineBound;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/** Held against what was put in, and against the bound that no method can beat. */
class CleanLineTest {
  private static final double RATE = 1e6;
  private static final int COUNT = 4000;
  private static final double LINE_HZ = 101_368.5;
  private static final double NOISE = 0.02;
  private static final IntToDoubleFunction SINE = sine(0.1, LINE_HZ);

  /** Cramér and Rao (Kay 1993, example 3.14): scatter, stated u and the shares held. */
  @Test
  void inWhiteNoiseItIsAsGoodAsCanBe() {
    SummaryStatistics f = new SummaryStatistics();
    SummaryStatistics a = new SummaryStatistics();
    SummaryStatistics spectrum = new SummaryStatistics();
    int held = 0;
    for (int seed = 0; seed < 200; seed++) {
      Waveform wave = record(SINE, seed);
      CleanLine line = fit(wave).orElseThrow();
      f.addValue(line.frequency_Hz() - LINE_HZ);
      a.addValue(line.amplitude() - 0.1);
      spectrum.addValue(seen(wave).frequency_Hz() - LINE_HZ);
      held += Math.abs(line.frequency_Hz() - LINE_HZ) <= 2 * line.frequencyU_Hz() ? 1 : 0;
      held += Math.abs(line.amplitude() - 0.1) <= 2 * line.amplitudeU() ? 1 : 0;
    }
    SineBound bound = SineBound.of(0.1, NOISE, COUNT, RATE);
    assertEquals(1, f.getStandardDeviation() / bound.frequency_Hz(), 0.15); // 3/√(2·200)
    assertEquals(1, a.getStandardDeviation() / bound.amplitude(), 0.15);
    assertTrue(spectrum.getStandardDeviation() > 1.4 * f.getStandardDeviation());
    assertEquals(0.96, held / 400.0, 0.03);
  }

  /** Ten cycles on a slope that falls by ten times the sine: neither bends the other. */
  @Test
  void aTrendDoesNotPullIt() {
    for (int turn = 0; turn < 8; turn++) {
      double phase = turn * Math.PI / 4;
      Waveform wave =
          record(
              i -> 0.1 * Math.sin(2 * Math.PI * 10.6 * i / COUNT + phase) - 1.0 * i / COUNT,
              20 + turn,
              NOISE / 100);
      CleanLine line =
          CleanLine.of(
                  wave,
                  RATE,
                  0,
                  COUNT,
                  StrongestLine.find(wave, RATE, 0, COUNT, 2000, 4000).orElseThrow())
              .orElseThrow();
      assertEquals(10.6 * RATE / COUNT, line.frequency_Hz(), 3 * line.frequencyU_Hz());
      assertEquals(0.1, line.amplitude(), 3 * line.amplitudeU());
    }
  }

  @Test
  void whatIsNotOneSteadySineIsLeftToTheSpectrum() {
    assertTrue(fit(record(SINE, 1)).isPresent());
    IntToDoubleFunction harmonic = sine(0.04, 2 * LINE_HZ);
    assertTrue(fit(record(i -> SINE.applyAsDouble(i) + harmonic.applyAsDouble(i), 2)).isEmpty());
    IntToDoubleFunction beside = sine(0.01, LINE_HZ + 2.5 * RATE / COUNT);
    assertTrue(fit(record(i -> SINE.applyAsDouble(i) + beside.applyAsDouble(i), 3)).isEmpty());
    double bend = Math.PI / COUNT / COUNT; // a quarter of a cycle at each end
    assertTrue(
        fit(record(i -> 0.1 * Math.sin(2 * Math.PI * 0.1013685 * i + bend * i * i), 4)).isEmpty(),
        "it wanders");
    assertTrue(
        fit(record(i -> SINE.applyAsDouble(i) * (1 + 1.0 * i / COUNT), 5)).isEmpty(), "it swells");
  }

  /** Five cycles over the stretch, and five less than half the rate has. */
  @Test
  void tooFewCyclesAreLeftToTheSpectrum() {
    for (double cycles : new double[] {5.3, COUNT / 2.0 - 5.3}) {
      Waveform wave = record(sine(0.1, cycles * RATE / COUNT), 6);
      StrongestLine line = StrongestLine.find(wave, RATE, 0, COUNT, 1000, RATE).orElseThrow();
      assertEquals(cycles, line.frequency_Hz() * COUNT / RATE, 0.3);
      assertTrue(CleanLine.of(wave, RATE, 0, COUNT, line).isEmpty());
    }
  }

  private static Optional<CleanLine> fit(Waveform wave) {
    return CleanLine.of(wave, RATE, 0, COUNT, seen(wave));
  }

  private static StrongestLine seen(Waveform wave) {
    return StrongestLine.find(wave, RATE, 0, COUNT, 1200, 2e6).orElseThrow();
  }

  private static IntToDoubleFunction sine(double amplitude, double frequency_Hz) {
    return i -> amplitude * Math.sin(2 * Math.PI * frequency_Hz * i / RATE + 0.4);
  }

  private static Waveform record(IntToDoubleFunction made, long seed) {
    return record(made, seed, NOISE);
  }

  private static Waveform record(IntToDoubleFunction made, long seed, double rms) {
    Random random = new Random(seed * 7919 + 3);
    int[] codes = new int[COUNT];
    for (int i = 0; i < COUNT; i++) {
      double noise = rms * random.nextGaussian();
      codes[i] = (int) Math.round((made.applyAsDouble(i) + noise) / (rms / 4));
    }
    return Waveform.ofOwnCodes(codes, rms / 4, 48, Unit.VOLT);
  }
}
