package corewright.measures.wave;

import java.util.function.IntToDoubleFunction;

/**
 * What a series of mean zero does near frequency zero, and so how well its mean is known: a mean is
 * the value of the spectrum at zero, and its variance is the density of the noise there over the
 * length. Lines elsewhere, however strong, count only by what they leak into the plain mean because
 * the stretch does not hold whole periods of them.
 *
 * @param varianceOfMean widened to what k = 2 stands for with so few bins
 * @see "Heidelberger and Welch, A spectral method for confidence interval generation, Comm. ACM 24
 *     (1981) 233"
 */
record NearZero(double varianceOfMean) {
  private static final int BINS = 16;
  private static final int FEWEST = 8 * BINS;

  /** Hann's bins share two thirds of their freedom: Student's t for 20 over 2, squared. */
  private static final double FEW_BINS = 1.09;

  /** No estimate, which is never below another, from a short stretch. */
  static NearZero of(IntToDoubleFunction series, int count) {
    if (count < FEWEST) {
      return new NearZero(Double.POSITIVE_INFINITY);
    }
    double[] re = new double[BINS + 2];
    double[] im = new double[BINS + 2];
    for (int k = 0; k < re.length; k++) {
      transform(series, count, k, re, im);
    }
    double power = 0;
    for (int k = 2; k < BINS + 1; k++) {
      double x = re[k] / 2 - (re[k - 1] + re[k + 1]) / 4;
      double y = im[k] / 2 - (im[k - 1] + im[k + 1]) / 4;
      power += (x * x + y * y) / (BINS - 1);
    }
    // |Hann bin|² of noise is 3/8 of n·σ²; the variance of the mean is σ²/n.
    double ofNoise = power / (3.0 / 8) / count / count;
    // A mean with Hann's weights is blind to lines: what the plain one differs by is their leak,
    // and some noise, which is left in it, since leak and noise may have cancelled.
    double hannMean = (re[0] / 2 - re[1] / 2) / count * 2;
    double plainMean = re[0] / count;
    double apart = hannMean - plainMean;
    double leak = apart * apart;
    return new NearZero(FEW_BINS * ofNoise + leak);
  }

  private static void transform(
      IntToDoubleFunction series, int count, int bin, double[] re, double[] im) {
    double angle = -2 * Math.PI * bin / count;
    double stepCos = Math.cos(angle);
    double stepSin = Math.sin(angle);
    double c = 1;
    double s = 0;
    for (int i = 0; i < count; i++) {
      double x = series.applyAsDouble(i);
      re[bin] += x * c;
      im[bin] += x * s;
      double turned = c * stepCos - s * stepSin;
      s = c * stepSin + s * stepCos;
      c = turned;
    }
  }
}
