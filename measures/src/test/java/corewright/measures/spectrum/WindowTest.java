package corewright.measures.spectrum;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WindowTest {

  /**
   * Noise bandwidth, highest side lobe, largest deviation within half a bin (dB), width at exactly
   * −3.000 dB. Hann, Hamming, BH4, 4B, 4C and HFT144D to HFT196D as Heinzel et al. publish them,
   * quoted in the CMSIS-DSP documentation; side lobes and flatness of the others as remembered from
   * there, their widths by numpy alone. All recomputed with numpy.
   */
  @ParameterizedTest
  @CsvSource({
    "RECTANGULAR, 1.0000, -13.26, 3.9224, 0.8845",
    "HANN, 1.5000, -31.47, 1.4236, 1.4382",
    "HAMMING, 1.3628, -42.68, 1.7514, 1.3008",
    "BLACKMAN, 1.7268, -58.11, 1.0989, 1.6409",
    "BLACKMAN_HARRIS_3, 1.7085, -70.83, 1.1287, 1.6208",
    "BLACKMAN_HARRIS_4, 2.0044, -92.01, 0.8256, 1.8962",
    "NUTTALL_4B, 2.0212, -93.32, 0.8118, 1.9122",
    "NUTTALL_4C, 1.9761, -98.17, 0.8506, 1.8687",
    "FTSRS, 3.7702, -76.62, 0.0156, 3.7274",
    "HFT70, 3.4129, -70.45, 0.0065, 3.3721",
    "HFT95, 3.8112, -95.01, 0.0044, 3.7592",
    "HFT90D, 3.8832, -90.22, 0.0039, 3.8320",
    "HFT116D, 4.2186, -116.80, 0.0028, 4.1579",
    "HFT144D, 4.5386, -144.05, 0.0021, 4.4698",
    "HFT169D, 4.8347, -169.53, 0.0017, 4.7588",
    "HFT196D, 5.1134, -196.21, 0.0013, 5.0309",
  })
  void agreesWithThePublishedFigures(
      Window window, double bandwidth, double sideLobe, double flatness, double width) {
    assertEquals(bandwidth, window.noiseBandwidth(), 5.1e-5);
    assertEquals(sideLobe, highestSideLobe(window), 0.0051);
    assertEquals(flatness, worstWithinHalfABin(window), 5.1e-5);
    assertEquals(width, widthAt(window, -3.0), 6e-5);
  }

  /** Harris 1978, table I (from memory): coherent gain; those two digits are all he prints. */
  @ParameterizedTest
  @CsvSource({
    "RECTANGULAR, 1.00",
    "HANN, 0.50",
    "HAMMING, 0.54",
    "BLACKMAN, 0.42",
    "BLACKMAN_HARRIS_3, 0.42",
    "BLACKMAN_HARRIS_4, 0.36"
  })
  void agreesWithHarris(Window window, double gain) {
    assertEquals(gain, window.coherentGain(), 0.00501);
  }

  /** The samples themselves give gain and bandwidth, and the response on and beside a bin. */
  @ParameterizedTest
  @EnumSource(Window.class)
  void samplesHaveTheFiguresOfTheirCoefficients(Window window) {
    int n = 4096;
    double[] w = window.samples(n);
    double sum = 0;
    double squares = 0;
    double re = 0;
    double im = 0;
    for (int i = 0; i < n; i++) {
      sum += w[i];
      squares += w[i] * w[i];
      double angle = 2 * Math.PI * 0.3 * (i - n / 2.0) / n;
      re += w[i] * Math.cos(angle);
      im += w[i] * Math.sin(angle);
    }
    assertEquals(window.coherentGain(), sum / n / w[n / 2], 1e-13);
    assertEquals(window.noiseBandwidth(), n * squares / (sum * sum), 1e-12);
    assertEquals(window.response(0.3), Math.hypot(re, im) / sum, 2e-3); // 1/n: one end is missing
  }

  @Test
  void hannIsARaisedCosine() {
    double[] w = Window.HANN.samples(8);
    assertEquals(0, w[0], 1e-16);
    assertEquals(0.5, w[2], 1e-16);
    assertEquals(1, w[4], 1e-16);
  }

  private static double highestSideLobe(Window window) {
    double f = 0.5;
    while (window.response(f) > 0) {
      f += 1e-3; // to the first zero
    }
    double highest = 0;
    for (; f < 60; f += 1e-3) {
      highest = Math.max(highest, Math.abs(window.response(f)));
    }
    return 20 * Math.log10(highest);
  }

  private static double worstWithinHalfABin(Window window) {
    double worst = 0;
    for (int i = 0; i <= 5000; i++) {
      worst = Math.max(worst, Math.abs(20 * Math.log10(window.response(i / 10_000.0))));
    }
    return worst;
  }

  private static double widthAt(Window window, double dB) {
    double low = 0;
    double high = 10;
    double level = Math.pow(10, dB / 20);
    for (double f = 0; f < 10; f += 0.01) {
      if (window.response(f) < level) {
        high = f;
        break;
      }
    }
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      if (window.response(middle) > level) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 2 * low;
  }
}
