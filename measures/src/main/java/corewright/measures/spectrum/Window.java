package corewright.measures.spectrum;

/**
 * Windows made of cosines, periodic: w(i) = Σ (−1)^k·a_k·cos(2πk·i/n). Coefficients as published;
 * the scale does not matter, spectra are calibrated with the sums of the samples.
 *
 * <p>{@link #HANN} for densities and for finding lines; {@link #HFT90D} or {@link #HFT116D} for
 * amplitudes: within 0.004 dB wherever the line lies between two bins, at the price of lines that
 * need 10 bins between them.
 *
 * @see "Heinzel, Rüdiger and Schilling, Spectrum and spectral density estimation by the DFT (2002),
 *     appendices C and D; Harris, Proc. IEEE 66 (1978) 51, table I; Nuttall, IEEE Trans. ASSP 29
 *     (1981) 84"
 */
public enum Window {
  RECTANGULAR(1),
  HANN(0.5, 0.5),
  HAMMING(0.54, 0.46),
  BLACKMAN(0.42, 0.5, 0.08),
  BLACKMAN_HARRIS_3(0.42323, 0.49755, 0.07922),
  BLACKMAN_HARRIS_4(0.35875, 0.48829, 0.14128, 0.01168),
  NUTTALL_4B(0.355768, 0.487396, 0.144232, 0.012604),
  NUTTALL_4C(0.3635819, 0.4891775, 0.1365995, 0.0106411),
  FTSRS(1, 1.93, 1.29, 0.388, 0.028),
  HFT70(1, 1.90796, 1.07349, 0.18199),
  HFT95(1, 1.9383379, 1.3045202, 0.4028270, 0.0350665),
  HFT90D(1, 1.942604, 1.340318, 0.440811, 0.043097),
  HFT116D(1, 1.9575375, 1.4780705, 0.6367431, 0.1228389, 0.0066288),
  HFT144D(1, 1.96760033, 1.57983607, 0.81123644, 0.22583558, 0.02773848, 0.00090360),
  /** Widely copied with the last digit of four coefficients cut off, which costs it 1.6 dB. */
  HFT169D(1, 1.97441843, 1.65409889, 0.95788187, 0.33673420, 0.06364622, 0.00521942, 0.00010599),
  HFT196D(
      1,
      1.979280420,
      1.710288951,
      1.081629853,
      0.448734314,
      0.112376628,
      0.015122992,
      0.000871252,
      0.000011896);

  @SuppressWarnings("ImmutableEnumChecker") // never written, never handed out
  private final double[] a;

  Window(double... a) {
    this.a = a;
  }

  /** All {@code n} samples. */
  public double[] samples(int n) {
    double[] w = new double[n];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < a.length; k++) {
        // k·i is reduced to less than a turn first, as an integer: no angle loses digits.
        double cosine = Math.cos(2 * Math.PI * ((long) k * i % n) / n);
        w[i] += (k % 2 == 0 ? a[k] : -a[k]) * cosine;
      }
    }
    return w;
  }

  /** Mean of the window over its peak: what a sine on a bin is attenuated by. */
  public double coherentGain() {
    double peak = 0;
    for (double coefficient : a) {
      peak += coefficient;
    }
    return a[0] / peak;
  }

  /** Width, in bins, of a rectangle that lets through as much noise. */
  public double noiseBandwidth() {
    double sum = 1;
    for (int k = 1; k < a.length; k++) {
      double ratio = a[k] / a[0];
      sum += ratio * ratio / 2;
    }
    return sum;
  }

  /**
   * Response to a sine that lies {@code bins} beside a bin, 1 on the bin, for long windows. May be
   * negative beyond the main lobe.
   */
  public double response(double bins) {
    double sum = a[0] * sinc(bins);
    for (int k = 1; k < a.length; k++) {
      sum += a[k] / 2 * (sinc(bins - k) + sinc(bins + k));
    }
    return sum / a[0];
  }

  /** Half the width of the main lobe in bins: lines closer than twice this run into each other. */
  public int lobe() {
    return a.length;
  }

  private static double sinc(double x) {
    return x == 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
  }
}
