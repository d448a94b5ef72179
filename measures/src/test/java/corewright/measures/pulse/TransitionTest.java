package corewright.measures.pulse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Reference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A second-order step 12 V to 48 V at 1 ms, damping 0.4, 2 kHz; read with numpy and Octave. */
class TransitionTest {
  private static final double RATE = 1e6;
  private static final double[] STEP =
      Reference.column("/reference/pulse_2nd_order_12to48V.csv", 1);

  @ParameterizedTest
  @CsvSource({
    "100,  12.225689, 47.884472, 0.451377",
    "200,  12.112844, 47.997316, 0.225689",
    "1000, 12.022569, 47.997316, 0.045138",
  })
  void levelsByHistogram(int bins, double low, double high, double width) {
    StateLevels levels = StateLevels.of(STEP, bins);
    assertEquals(low, levels.low(), 6e-7);
    assertEquals(high, levels.high(), 6e-7);
    assertEquals(width, levels.binWidth(), 6e-7);
    assertTrue(Math.abs(levels.low() - 12) <= 1.0001 * width / 2, "the truth is in the bin");
    assertEquals(width / Math.sqrt(12), levels.u(), 6e-7);
  }

  /** Columns: levels, then t10, t50, t90 (s), overshoot (%), settling to 2 % (s). */
  @ParameterizedTest
  @CsvSource({
    "12, 48, 0.001038221, 0.001098325, 0.001154684, 25.382500, 0.000570870",
    "12.022569, 47.997316, 0.001038335, 0.001098362, 0.001154683, 25.407779, 0.000570705",
    "12.225689, 47.884472, 0.001039312, 0.001098527, 0.001154317, 25.949367, 0.000564293",
  })
  void instantsAgreeWithTwoPrograms(
      double low,
      double high,
      double t10,
      double t50,
      double t90,
      double overshoot,
      double settling) {
    Transition t = Transition.of(STEP, RATE, low, high);
    assertEquals(t10, t.t10_s(), 1.1e-9);
    assertEquals(t50, t.t50_s(), 1.1e-9);
    assertEquals(t90, t.t90_s(), 1.1e-9);
    assertEquals(overshoot, t.overshootPercent(), 4e-6);
    assertEquals(settling, t.settling_s(2).orElseThrow(), 1.1e-9);
  }

  /** Theory of the second-order step: rise 116.461 µs, overshoot 25.382672 %, settling to 5 %. */
  @Test
  void instantsAgreeWithTheory() {
    Transition t = Transition.of(STEP, RATE, 12, 48);
    assertEquals(116.461e-6, t.duration_s(), 3e-9); // straight lines between samples 1 µs apart
    assertEquals(
        25.382672198, t.overshootPercent(), 0.0005); // 0.1 mV rounding, and the peak between
    assertEquals(0.001605487, t.t50_s() + t.settling_s(5).orElseThrow(), 1.1e-9); // numpy
  }

  @Test
  void aFallIsAMirroredRise() {
    double[] fall = new double[STEP.length];
    for (int i = 0; i < fall.length; i++) {
      fall[i] = 60 - STEP[i];
    }
    Transition up = Transition.of(STEP, RATE, 12, 48);
    Transition down = Transition.of(fall, RATE, 48, 12);
    assertEquals(up.duration_s(), down.duration_s(), 1e-15);
    assertEquals(up.overshootPercent(), down.overshootPercent(), 1e-10);
    assertEquals(up.settling_s(2).orElseThrow(), down.settling_s(2).orElseThrow(), 1e-12);
  }

  /** By hand: a straight rise over ten samples, with a dip of 5 % before it. */
  @Test
  void readsAStraightRise() {
    double[] x = {0, 0, -0.5, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 10, 10};
    Transition t = Transition.of(x, 1, 0, 10);
    assertEquals(4, t.t10_s(), 1e-12);
    assertEquals(8, t.t50_s(), 1e-12);
    assertEquals(8, t.duration_s(), 1e-12);
    assertEquals(5, t.preshootPercent(), 1e-12);
    assertEquals(0, t.overshootPercent());
    assertEquals(4.5, t.settling_s(5).orElseThrow(), 1e-12);
  }

  @Test
  void saysWhatTheRecordDoesNotShow() {
    double[] x = {0, 0, 4, 8, 9.5, 9.4};
    assertTrue(Transition.of(x, 1, 0, 10).settling_s(5).isEmpty());
    assertThrows(IllegalArgumentException.class, () -> Transition.of(x, 1, 0, 20));
    assertThrows(IllegalArgumentException.class, () -> Transition.of(x, 1, 5, 5));
    Transition whole = Transition.of(x, 1, 0, 10);
    assertThrows(IllegalArgumentException.class, () -> whole.settling_s(100));
    assertThrows(IllegalArgumentException.class, () -> StateLevels.of(new double[9], 100));
    assertThrows(IllegalArgumentException.class, () -> StateLevels.of(x, 7));
  }
}
