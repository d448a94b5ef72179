package corewright.measures.hold;

import static corewright.measures.Synthetic.every;
import static corewright.measures.Synthetic.exactly;
import static corewright.measures.Synthetic.steps;
import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.Capture;
import corewright.measures.Synthetic;
import corewright.measures.Synthetic.Signal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds of load currents whose steps are known, made from formulas and seeded noise. */
class HoldFinderTest {
  private static final double[] UP_AND_DOWN = {0, 0.5, 1, 2, 3, 2, 0};
  private static final double CODE_A = 5.0 / 4096;

  @ParameterizedTest
  @CsvSource({
    // rate_Hz, hold_s, ramp_s, noise_A, largest error_s
    "1e6, 0.009, 1e-5, 0.004, 0.2e-6",
    "1e6, 0.009, 2e-3, 0.004, 4e-6",
    "1e6, 0.009, 2e-3, 0.02, 20e-6",
    "1e5, 0.05, 2e-3, 0.004, 10e-6",
    "1e4, 4, 2e-5, 0.004, 5e-6",
    "1e4, 4, 2e-3, 0.02, 0.1e-3",
    "1e4, 4, 2e-2, 0.004, 0.2e-3",
    "1e4, 6, 1.2, 0.004, 0.02", // a person turns a knob
    "100, 6, 1.2, 0.004, 0.02",
    "10, 5, 1e-3, 0.004, 0.05",
    "1, 20, 1e-3, 0.004, 0.5",
  })
  void edgesAreFoundAtTheMiddleOfTheirRamp(
      double rate_Hz, double hold_s, double ramp_s, double noise_A, double error_s) {
    for (long seed = 1; seed <= 5; seed++) {
      DoubleUnaryOperator load = steps(every(hold_s, 7), UP_AND_DOWN, ramp_s);
      List<Hold> holds = holds(rate_Hz, 7 * hold_s, new Signal(load, noise_A, CODE_A), seed);
      assertEquals(7, holds.size(), "seed " + seed + ": " + holds);
      for (int i = 1; i < 7; i++) {
        assertEquals(i * hold_s, holds.get(i).start_s(), error_s, "seed " + seed + " hold " + i);
        assertEquals(0, holds.get(i).pulses(), "seed " + seed + " hold " + i);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void anyOrderAnyNumberOfHoldsIsFound(long seed) {
    Random random = new Random(seed);
    int count = 3 + random.nextInt(38);
    double[] starts = new double[count];
    double[] levels = new double[count];
    double at = 0;
    for (int i = 0; i < count; i++) {
      starts[i] = at;
      at += 0.05 + random.nextDouble();
      do {
        levels[i] = 0.25 * random.nextInt(13);
      } while (i > 0 && levels[i] == levels[i - 1]);
    }
    List<Hold> holds = holds(1e4, at, new Signal(steps(starts, levels, 2e-4), 0.008, CODE_A), seed);
    assertEquals(count, holds.size(), holds.toString());
    for (int i = 0; i < count; i++) {
      assertEquals(starts[i], holds.get(i).start_s(), 0.2e-4, "hold " + i);
    }
  }

  @Test
  void smallStepsOfASmallLoadCount() {
    double[] levels = {0, 0.05, 0.1, 0.15, 0.2, 0};
    List<Hold> holds =
        holds(1e5, 0.6, new Signal(steps(every(0.1, 6), levels, 1e-3), 0.002, 1e-4), 7);
    assertEquals(6, holds.size(), holds.toString());
  }

  @ParameterizedTest
  @CsvSource({"0.004", "0.0", "0.05"})
  void aLoadThatNeverStepsIsOneHold(double noise_A) {
    DoubleUnaryOperator wander = t -> 1 + 0.004 * Math.sin(2 * Math.PI * 0.3 * t) - 0.002 * t;
    assertEquals(1, holds(1e4, 20, new Signal(wander, noise_A, CODE_A), 3).size());
    DoubleUnaryOperator hum = t -> 0.003 * Math.sin(2 * Math.PI * 50 * t);
    assertEquals(1, holds(1e4, 20, new Signal(hum, noise_A, CODE_A), 3).size());
  }

  @Test
  void singleWildSamplesMakeNoHold() {
    DoubleUnaryOperator load = steps(every(1, 3), new double[] {0, 1, 2}, 1e-4);
    DoubleUnaryOperator wild = t -> Math.round(t * 1e4) % 7001 == 3000 ? 50 : load.applyAsDouble(t);
    assertEquals(3, holds(1e4, 3, new Signal(wild, 0.004, CODE_A), 3).size());
  }

  @Test
  void aLoadThatOvershootsAndSwingsInIsOneStep() {
    DoubleUnaryOperator load = steps(every(0.009, 3), new double[] {0, 2, 1}, 1e-5);
    DoubleUnaryOperator swinging =
        t -> {
          double since = t % 0.009;
          double swing = t < 0.009 ? 0 : 0.3 * Math.exp(-since / 4e-4) * Math.cos(6000 * since);
          return load.applyAsDouble(t) * (1 + swing);
        };
    List<Hold> holds = holds(1e6, 0.027, new Signal(swinging, 0.004, CODE_A), 3);
    assertEquals(3, holds.size(), holds.toString());
    assertEquals(0.009, holds.get(1).start_s(), 5e-6);
  }

  @ParameterizedTest
  @CsvSource({"0.3, 0.005, 0.005", "0.5, 0.0035, 0.0045", "0.5, 0.008, 0.0032"})
  void pulsesLongEnoughToBeJudgedAreHolds(double base_A, double rest_s, double pulse_s) {
    double[] starts = new double[9];
    double[] levels = new double[9];
    for (int i = 0; i < 9; i++) {
      starts[i] = i == 0 ? 0 : starts[i - 1] + (i % 2 == 1 ? rest_s : pulse_s);
      levels[i] = i % 2 == 0 ? base_A : 3;
    }
    Signal load = new Signal(steps(starts, levels, 1e-5), 0, 1e-4);
    Capture capture = Synthetic.capture(1e6, starts[8] + rest_s, load, exactly(48), exactly(12), 1);
    assertEquals(9, HoldFinder.find(capture, Optional.of(0.0031)).size());
  }

  @Test
  void aTrainOfShortPulsesIsOneHoldThatCountsThem() {
    // 440 triangles a second, 20 A in 0.4 ms, on 0.5 A.
    DoubleUnaryOperator load =
        t -> {
          double since = t % (1 / 440.0) - 1e-3;
          double height = 20 * (1 - Math.abs(since - 0.2e-3) / 0.2e-3);
          return 0.5 + (t > 0.5 ? Math.max(0, height) : 0);
        };
    List<Hold> holds = holds(1e5, 2, new Signal(load, 0.01, 1e-3), 3);
    assertEquals(1, holds.size(), holds.toString());
    assertEquals(660, holds.get(0).pulses(), 1);
  }

  @Test
  void aTrainOfSquarePulsesIsOneHoldWhereTheyAreTooShortToBeJudged() {
    DoubleUnaryOperator load = t -> t > 1 && t < 3 && t % 0.02 < 0.003 ? 2 : 0.5;
    Capture capture =
        Synthetic.capture(1e4, 4, new Signal(load, 0.004, CODE_A), exactly(48), exactly(12), 3);
    List<Hold> holds = HoldFinder.find(capture, Optional.of(0.12));
    assertEquals(1, holds.size(), holds.toString());
    assertEquals(100, holds.get(0).pulses(), 1);
  }

  @Test
  void aContactThatOpensForMomentsDoesNotCutTheHold() {
    DoubleUnaryOperator steps = steps(every(2, 3), new double[] {0, 2, 3}, 1e-4);
    DoubleUnaryOperator load =
        t -> (t > 3 && t < 3.004) || (t > 3.5 && t < 3.5005) ? 0 : steps.applyAsDouble(t);
    List<Hold> holds = holds(1e4, 6, new Signal(load, 0.004, CODE_A), 3);
    assertEquals(3, holds.size(), holds.toString());
    assertEquals(2, holds.get(1).pulses());
  }

  @Test
  void aResistorsCurrentThatFollowsACollapseIsNoStep() {
    double[] levels = {0, 0.5, 1, 2, 3};
    DoubleUnaryOperator output = t -> t < 18 ? 48 : 40 + 8 * Math.exp(-(t - 18) / 0.01);
    DoubleUnaryOperator asked = steps(every(4, 5), levels, 2e-5);
    DoubleUnaryOperator load = t -> asked.applyAsDouble(t) * output.applyAsDouble(t) / 48;
    Capture capture =
        Synthetic.capture(
            1e4,
            20,
            new Signal(load, 0.004, CODE_A),
            new Signal(output, 0.025, 80.0 / 4096),
            exactly(12),
            5);
    assertEquals(5, HoldFinder.find(capture, Optional.empty()).size());
  }

  @Test
  void aUnitThatHiccupsToZeroStaysInTheHoldOfItsLoad() {
    double[] levels = {0, 0.5, 1, 2, 3, 2, 0};
    DoubleUnaryOperator asked = steps(every(4, 7), levels, 2e-5);
    DoubleUnaryOperator output =
        t -> {
          double phase = t % 0.2;
          boolean hiccups = t >= 16 && t < 23.9;
          double rise = Math.min(1, phase / 0.015);
          double fall = Math.max(0, 1 - (phase - 0.02) / 0.008);
          return hiccups ? 48 * (phase < 0.02 ? rise : fall) : 48 - 0.02 * asked.applyAsDouble(t);
        };
    DoubleUnaryOperator load =
        t -> {
          double v = output.applyAsDouble(t);
          return asked.applyAsDouble(t) * Math.tanh(v / 0.3);
        };
    Capture capture =
        Synthetic.capture(
            1e4,
            28,
            new Signal(load, 0.004, CODE_A),
            new Signal(output, 0.025, 80.0 / 4096),
            exactly(12),
            5);
    List<Hold> holds = HoldFinder.find(capture, Optional.of(0.52));
    assertEquals(7, holds.size(), holds.toString());
    assertEquals(16, holds.get(4).start_s(), 0.1);
    assertEquals(20, holds.get(5).start_s(), 0.1);
  }

  @Test
  void aUnitThatLatchesOffStaysInItsLastHold() {
    DoubleUnaryOperator asked = steps(every(4, 7), UP_AND_DOWN, 2e-5);
    DoubleUnaryOperator output = t -> t < 17 ? 48 : 48 * Math.exp(-(t - 17) / 0.005);
    DoubleUnaryOperator load =
        t -> asked.applyAsDouble(t) * Math.tanh(output.applyAsDouble(t) / 0.3);
    Capture capture =
        Synthetic.capture(
            1e4,
            28,
            new Signal(load, 0.004, CODE_A),
            new Signal(output, 0.025, 80.0 / 4096),
            exactly(12),
            5);
    List<Hold> holds = HoldFinder.find(capture, Optional.empty());
    assertEquals(5, holds.size(), holds.toString());
    assertEquals(28, holds.get(4).end_s());
  }

  private static List<Hold> holds(double rate_Hz, double length_s, Signal load, long seed) {
    Capture capture = Synthetic.capture(rate_Hz, length_s, load, exactly(48), exactly(12), seed);
    return HoldFinder.find(capture, Optional.empty());
  }
}
