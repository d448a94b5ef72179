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

  /** So many that the highest bin turns by a twentieth of a radian in each. */
  private static final int BLOCKS = 2048;

  /** Hann's bins share two thirds of their freedom: Student's t for 20 over 2, squared. */
  private static final double FEW_BINS = 1.09;

  /** No estimate, which is never below another, from a short stretch. */
  static NearZero of(IntToDoubleFunction series, int count) {
    if (count < FEWEST) {
      return new NearZero(Double.POSITIVE_INFINITY);
    }
    double[] re = new double[BINS + 2];
    double[] im = new double[BINS + 2];
    transform(series, count, re, im);
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

  /**
   * The lowest bins of the transform, which turn so slowly that a short block counts by its moments
   * about its middle: e^jwu is 1 + jwu − (wu)²/2 − j(wu)³/6 to 2·10⁻⁸ there.
   */
  private static void transform(IntToDoubleFunction series, int count, double[] re, double[] im) {
    int block = Math.max(1, count / BLOCKS);
    double step = -2 * Math.PI / count;
    for (int from = 0; from < count; from += block) {
      int length = Math.min(block, count - from);
      double half = (length - 1) / 2.0;
      double sum = 0;
      double first = 0;
      double second = 0;
      double third = 0;
      for (int i = 0; i < length; i++) {
        double x = series.applyAsDouble(from + i);
        double u = i - half;
        sum += x;
        first += x * u;
        second += x * u * u;
        third += x * u * u * u;
      }
      double cos1 = Math.cos(step * (from + half));
      double sin1 = Math.sin(step * (from + half));
      double cos = 1;
      double sin = 0;
      for (int bin = 0; bin < re.length; bin++) {
        double w = step * bin;
        double even = sum - w * w * second / 2;
        double odd = w * first - w * w * w * third / 6;
        re[bin] += cos * even - sin * odd;
        im[bin] += sin * even + cos * odd;
        double turned = cos * cos1 - sin * sin1;
        sin = cos * sin1 + sin * cos1;
        cos = turned;
      }
    }
  }
}
