package corewright.measures.spectrum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Closed form: the lines that were put in; a flat top is good to 0.05 %. */
class HarmonicsTest {
  private static final double RATE = 1e6;
  private static final int N = 1 << 14;

  @Test
  void readsTheLinesThatWerePutIn() {
    Harmonics lines = of(98_765.4, 0.5, 0.012, 1, 0.4, 2, 0.1, 3, 0.03);
    assertEquals(0.4, lines.amplitude(1).orElseThrow(), 0.4 * 5e-4);
    assertEquals(0.1, lines.amplitude(2).orElseThrow(), 0.1 * 1e-3);
    assertEquals(0.03, lines.amplitude(3).orElseThrow(), 0.03 * 2e-3);
    assertEquals(Math.hypot(0.1, 0.03) / 0.4, lines.distortion(5).orElseThrow(), 4e-4);
    assertEquals(0.03, lines.subharmonicRatio().orElseThrow(), 1e-4);
  }

  /** 2 · 312.3 kHz is above half of 1 MS/s and appears at 1 MHz − 624.6 kHz. */
  @Test
  void looksForFoldedLinesWhereTheyAppear() {
    Harmonics lines = of(312_300, 1, 0.4, 2, 0.1);
    assertEquals(375_400, lines.apparent_Hz(2), 1e-6);
    assertEquals(0.1, lines.amplitude(2).orElseThrow(), 1e-4);
  }

  /** A third of the rate: the second harmonic folds onto the fundamental. */
  @Test
  void doesNotReadLinesThatRunIntoEachOther() {
    Harmonics lines = of(RATE / 3, 1, 0.4, 2, 0.1);
    assertTrue(lines.amplitude(2).isEmpty());
    assertTrue(of(RATE / 2, 1, 0.4).amplitude(2).isEmpty()); // folds to 0
    assertTrue(of(400, 1, 0.4).subharmonicRatio().isEmpty()); // 200 Hz is three bins from 0
    assertThrows(IllegalArgumentException.class, () -> of(0, 1, 0.4));
  }

  private static Harmonics of(double fundamental_Hz, double... orderAndAmplitude) {
    double[] x = new double[N];
    for (int i = 0; i < N; i++) {
      x[i] = 48;
      for (int k = 0; k < orderAndAmplitude.length; k += 2) {
        double omega = 2 * Math.PI * fundamental_Hz * orderAndAmplitude[k] / RATE;
        x[i] += orderAndAmplitude[k + 1] * Math.cos(omega * i + k);
      }
    }
    return new Harmonics(Spectrum.of(x, RATE, Window.HFT116D, N), fundamental_Hz);
  }
}
