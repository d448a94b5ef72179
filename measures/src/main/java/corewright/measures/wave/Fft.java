package corewright.measures.wave;

/**
 * Discrete Fourier transform of a power-of-two number of complex points, in place: radix 2,
 * decimation in time. Errors grow as the root of log n: a few 1e-16 of the largest bin.
 *
 * @see "Cooley and Tukey, An algorithm for the machine calculation of complex Fourier series
 *     (1965)"
 */
public final class Fft {
  private final int n;
  private final double[] cos;
  private final double[] sin;

  /**
   * @param n number of points, a power of two
   */
  public Fft(int n) {
    if (Integer.bitCount(n) != 1) {
      throw new IllegalArgumentException("not a power of two: " + n);
    }
    this.n = n;
    cos = new double[n / 2];
    sin = new double[n / 2];
    for (int i = 0; i < n / 2; i++) {
      double angle = -2 * Math.PI * i / n;
      cos[i] = Math.cos(angle);
      sin[i] = Math.sin(angle);
    }
  }

  /** Forward transform: X[k] = Σ x[i]·exp(−2πj·ik/n). */
  public void transform(double[] re, double[] im) {
    reverseBits(re, im);
    for (int half = 1; half < n; half *= 2) {
      int stride = n / (2 * half);
      for (int start = 0; start < n; start += 2 * half) {
        for (int i = 0; i < half; i++) {
          int a = start + i;
          int b = a + half;
          double c = cos[i * stride];
          double s = sin[i * stride];
          double real = re[b] * c - im[b] * s;
          double imaginary = re[b] * s + im[b] * c;
          re[b] = re[a] - real;
          im[b] = im[a] - imaginary;
          re[a] += real;
          im[a] += imaginary;
        }
      }
    }
  }

  private void reverseBits(double[] re, double[] im) {
    if (re.length != n || im.length != n) {
      throw new IllegalArgumentException(re.length + " points where " + n + " are planned for");
    }
    int shift = Integer.numberOfLeadingZeros(n) + 1;
    for (int i = 0; i < n; i++) {
      int j = n == 1 ? 0 : Integer.reverse(i) >>> shift;
      if (j > i) {
        double real = re[i];
        re[i] = re[j];
        re[j] = real;
        double imaginary = im[i];
        im[i] = im[j];
        im[j] = imaginary;
      }
    }
  }
}
