package corewright.measures.spectrum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Reference;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpectrumTest {
  private static final double[] RECORD = Reference.column("/reference/sinefit64.csv", 1);

  /** scipy 1.17 {@code signal.welch}, Hann, 32 of 64 samples, half overlap, scaling density. */
  @ParameterizedTest
  @CsvSource({
    "0, 6.707790433899e-03",
    "1, 1.236642240238e-02",
    "2, 6.173042052628e-03",
    "8, 2.940400634503e-05",
    "16, 1.171573344671e-05"
  })
  void densityAgreesWithScipy(int bin, double density) {
    Spectrum spectrum = Spectrum.of(RECORD, 1e5, Window.HANN, 32);
    assertEquals(3, spectrum.segments());
    assertEquals(3125.0 * bin, spectrum.frequency_Hz(bin), 1e-9);
    assertEquals(1, spectrum.density(bin) / density, 1e-11);
  }

  /** scipy 1.17 {@code signal.welch}, HFT90D by {@code general_cosine}, scaling spectrum. */
  @ParameterizedTest
  @CsvSource({
    "0, 6.174998909079e-01", "1, 1.239928144791e+00", "2, 1.203572676002e+00",
    "3, 1.162895896899e+00", "8, 1.734047773328e-03", "32, 1.541917528107e-03"
  })
  void amplitudeAgreesWithScipy(int bin, double amplitude) {
    Spectrum spectrum = Spectrum.of(RECORD, 1e5, Window.HFT90D, 64);
    assertEquals(1, spectrum.amplitude(bin) / amplitude, 1e-11);
  }

  /** Heinzel et al.: a flat top reads a sine anywhere between two bins within 0.0039 dB. */
  @ParameterizedTest
  @CsvSource({"100.0", "100.17", "100.35", "100.5", "412.8"})
  void flatTopReadsTheAmplitudeBetweenBins(double bins) {
    int n = 4096;
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = 47 + 0.25 * Math.sin(2 * Math.PI * bins * i / n + 0.4);
    }
    Spectrum spectrum = Spectrum.of(x, 1e6, Window.HFT90D, n);
    double read = spectrum.amplitude((int) Math.round(bins));
    assertEquals(0, 20 * Math.log10(read / 0.25), 0.00395);
  }

  /** White noise of deviation σ has density σ·√(2/rate) everywhere, and its rms comes back. */
  @Test
  void densityOfWhiteNoise() {
    Well19937c random = new Well19937c(5);
    double[] x = new double[1 << 17];
    double squares = 0;
    for (int i = 0; i < x.length; i++) {
      x[i] = 0.01 * random.nextGaussian();
      squares += x[i] * x[i];
    }
    Spectrum spectrum = Spectrum.of(x, 1e6, Window.HANN, 512);
    double mean = 0;
    for (int k = 20; k < 236; k++) {
      mean += spectrum.density(k) * spectrum.density(k) / 216;
    }
    assertEquals(1, Math.sqrt(mean) / (0.01 * Math.sqrt(2e-6)), 0.01);
    assertEquals(1, spectrum.rms(0, 5e5) / Math.sqrt(squares / x.length), 0.01);
    assertEquals(Math.sqrt(0.2), spectrum.rms(1e5, 2e5) / spectrum.rms(0, 5e5), 0.02);
  }

  @Test
  void refusesSegmentsThatDoNotFit() {
    assertThrows(IllegalArgumentException.class, () -> Spectrum.of(RECORD, 1e5, Window.HANN, 128));
    assertThrows(IllegalArgumentException.class, () -> Spectrum.of(RECORD, 1e5, Window.HANN, 48));
  }
}
