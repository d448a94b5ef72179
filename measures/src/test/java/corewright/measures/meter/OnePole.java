package corewright.measures.meter;

/**
 * A low-pass of one pole, as analogue circuits have it: 1/(1 + jf/b).
 *
 * @param bandwidth its −3 dB point over the sample rate
 */
record OnePole(double bandwidth) {
  private static final int PARTS = 400;

  double gain(double frequency) {
    return 1 / Math.hypot(1, frequency / bandwidth);
  }

  double phase(double frequency) {
    return -Math.atan(frequency / bandwidth);
  }

  /**
   * What is left of the variance of first-order noise whose spectrum ends at half the sample rate.
   *
   * @see "Box and Jenkins, Time Series Analysis, 3.2.3: its spectrum (from memory)"
   */
  double leftOf(double phi) {
    double left = 0;
    for (int k = 0; k < PARTS; k++) {
      double f = (k + 0.5) / PARTS / 2;
      double density = (1 - phi * phi) / (1 - 2 * phi * Math.cos(2 * Math.PI * f) + phi * phi);
      left += density * gain(f) * gain(f) / PARTS;
    }
    return left;
  }

  /** What comes out of samples, joined by straight lines. */
  double[] of(double[] x) {
    double a = 2 * Math.PI * bandwidth;
    double keep = Math.exp(-a);
    double ramp = (1 - keep) / a;
    double[] y = new double[x.length];
    for (int i = 1; i < x.length; i++) {
      y[i] = keep * y[i - 1] + (ramp - keep) * x[i - 1] + (1 - ramp) * x[i];
    }
    return y;
  }

  /** Variance that {@link #of} leaves of first-order noise with a variance of 1. */
  double sampledLeftOf(double phi) {
    double[] pulse = new double[PARTS];
    double fresh = Math.sqrt(1 - phi * phi);
    for (int i = 0; i < PARTS - 1; i++) {
      pulse[i + 1] = fresh * Math.pow(phi, i);
    }
    double squares = 0;
    for (double y : of(pulse)) {
      squares += y * y;
    }
    return squares;
  }
}
