package corewright.measures.spectrum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Reference;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SineFitTest {
  private static final double[] RECORD = Reference.column("/reference/sinefit64.csv", 1);
  private static final double RATE = 1e5;

  /** numpy {@code lstsq} and R {@code lm}, which agree in 12 digits. */
  @ParameterizedTest
  @CsvSource({
    "3123, 0.915731775728, -0.772474767117, 2.499941622747, 1.198032533327, 5.151761828836e-03",
    "3100, 0.883532896463, -0.811150236722, 2.507326196862, 1.199414476178, 2.074642229171e-02",
  })
  void threeParametersAgreeWithTwoPrograms(
      double f, double a, double b, double c, double amplitude, double rms) {
    SineFit fit = SineFit.atFrequency(RECORD, RATE, f);
    assertEquals(a, fit.a(), 1e-12);
    assertEquals(b, fit.b(), 1e-12);
    assertEquals(c, fit.offset(), 1e-12);
    assertEquals(amplitude, fit.amplitude(), 1e-12);
    assertEquals(rms, fit.rmsError(), 1e-14);
    assertEquals(0, fit.frequencyU_Hz());
  }

  /** numpy and R {@code nls}; from any start within half a cycle over the record. */
  @ParameterizedTest
  @CsvSource({"3100", "3122", "3123", "2600", "3600"})
  void fourParametersAgreeWithTwoPrograms(double start_Hz) {
    SineFit fit = SineFit.near(RECORD, RATE, start_Hz);
    assertEquals(3121.990328495, fit.frequency_Hz(), 1e-8);
    assertEquals(0.914360015220, fit.a(), 2e-12);
    assertEquals(-0.774210233145, fit.b(), 2e-12);
    assertEquals(2.500262575662, fit.offset(), 2e-12);
    assertEquals(1.198105054884, fit.amplitude(), 2e-12);
    assertEquals(0.702588885909, fit.phase_rad(), 2e-12);
    assertEquals(5.068523708314e-03, fit.rmsError(), 1e-14);
    assertEquals(44.461968, fit.sinad_dB(), 1e-6);
    assertEquals(7.092492, fit.effectiveBits(), 1e-6);
  }

  /** numpy 1.24 and scipy 1.10 on the same record: s²·(JᵀJ)⁻¹ with 64 − 4 degrees of freedom. */
  @Test
  void uncertaintiesAgreeWithAnotherProgram() {
    SineFit fit = SineFit.near(RECORD, RATE, 3100);
    assertEquals(0.71618896269, fit.frequencyU_Hz(), 2e-8);
    assertEquals(9.2695375666e-4, fit.amplitudeU(), 2e-11);
  }

  /** The truth of that record is 3123 Hz and 1.2 V: within two standard uncertainties. */
  @Test
  void uncertaintyCoversTheTruthOfTheRecord() {
    SineFit fit = SineFit.near(RECORD, RATE, 3100);
    assertEquals(3123, fit.frequency_Hz(), 2 * fit.frequencyU_Hz());
    assertEquals(1.2, fit.amplitude(), 3 * fit.amplitudeU());
  }

  /** 400 seeded records: scatter is what each fit says, and the bound of Cramér and Rao. */
  @Test
  void scattersAsItSaysAndAsTheBoundAllows() {
    Well19937c random = new Well19937c(3);
    SummaryStatistics f = new SummaryStatistics();
    SummaryStatistics a = new SummaryStatistics();
    SineFit fit = SineFit.near(RECORD, RATE, 3100);
    for (int run = 0; run < 400; run++) {
      double[] x = new double[1000];
      for (int i = 0; i < x.length; i++) {
        x[i] = Math.cos(0.9 * i + 0.3) + 0.1 * random.nextGaussian();
      }
      fit = SineFit.near(x, 1e6, 0.9 * 1e6 / (2 * Math.PI) + 200);
      f.addValue(fit.frequency_Hz());
      a.addValue(fit.amplitude());
    }
    SineBound bound = SineBound.of(1, 0.1, 1000, 1e6);
    assertEquals(1, f.getStandardDeviation() / bound.frequency_Hz(), 0.11); // 3/√(2·400)
    assertEquals(1, a.getStandardDeviation() / bound.amplitude(), 0.11);
    assertEquals(1, fit.frequencyU_Hz() / bound.frequency_Hz(), 0.07);
    assertEquals(1, fit.amplitudeU() / bound.amplitude(), 0.07);
  }

  /** Kay 1993, example 3.14 (formula from memory); var(ω) 2.4000024e-10, var(φ) 7.988012e-5. */
  @Test
  void boundOfTheTextbook() {
    SineBound bound = SineBound.of(1, 0.1, 1000, 2 * Math.PI);
    assertEquals(1.549194113e-5, bound.frequency_Hz(), 5e-15);
    assertEquals(7.988012e-5, bound.phase_rad() * bound.phase_rad(), 5e-12);
    assertEquals(2e-5, bound.amplitude() * bound.amplitude(), 1e-18);
    // The inverse of the Fisher matrix itself, at 0.9 rad per sample (numpy): 0.14 % more.
    assertEquals(2.403292e-10, bound.frequency_Hz() * bound.frequency_Hz(), 4e-13);
  }

  /**
   * Ideal quantiser, a full-scale sine of 127 cycles in 4096 samples: 6.02·N + 1.76 dB. numpy gives
   * 49.9882, 62.0034, 73.9740, 86.0945 and 97.9195 dB for this very record.
   */
  @ParameterizedTest
  @CsvSource({
    "8, 49.9882, 49.9257",
    "10, 62.0034, 61.9669",
    "12, 73.9740, 74.0081",
    "14, 86.0945, 86.0493",
    "16, 97.9195, 98.0905"
  })
  void countsTheBitsOfAnIdealQuantiser(int bits, double numpy_dB, double theory_dB) {
    double q = 2 / Math.pow(2, bits);
    double[] x = new double[4096];
    for (int i = 0; i < x.length; i++) {
      double sine = (1 - q / 2) * Math.sin(2 * Math.PI * 127 * i / 4096 + 0.1);
      x[i] = q * (Math.floor(sine / q) + 0.5);
    }
    SineFit fit = SineFit.atFrequency(x, 4096, 127);
    assertEquals(numpy_dB, fit.sinad_dB(), 6e-5);
    assertEquals(theory_dB, fit.sinad_dB(), 0.3);
    assertEquals(bits, fit.effectiveBits(), 0.05);
    assertEquals(bits, fit.effectiveBits(2), 0.05);
  }

  @Test
  void refusesWhatHoldsNoSine() {
    Well19937c random = new Well19937c(2);
    double[] ramp = new double[200];
    for (int i = 0; i < ramp.length; i++) {
      ramp[i] = i + random.nextGaussian();
    }
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> SineFit.near(ramp, 1000, 30));
    assertTrue(refusal.getMessage().contains("no clean sine near 30"), refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> SineFit.near(new double[4], 1000, 30));
    assertThrows(IllegalArgumentException.class, () -> SineFit.atFrequency(ramp, 1000, 0));
  }
}
