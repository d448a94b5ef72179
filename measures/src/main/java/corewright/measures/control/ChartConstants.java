package corewright.measures.control;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Gamma;

/**
 * What range and standard deviation of n normal values come to, in units of the true deviation; and
 * the factors of control limits that follow.
 *
 * @param n size of a group, 2 to 25
 * @param d2 expected range
 * @param d3 standard deviation of the range
 * @param c4 expected standard deviation (denominator n − 1)
 * @see "Tippett, Biometrika 17 (1925) 364; ISO 7870-2, table 2"
 */
public record ChartConstants(int n, double d2, double d3, double c4) {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
  private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(40);
  private static final int PANELS = 3;
  private static final double FAR = 9;

  public static ChartConstants of(int n) {
    if (n < 2 || n > 25) {
      throw new IllegalArgumentException("chart constants are for groups of 2 to 25, not " + n);
    }
    double d2 = integrate(-FAR, FAR, x -> covered(n, x));
    // E[R²] = 2 ∫∫ over x < y of the probability that one value lies below x and one above y.
    double squares = 2 * integrate(-FAR, FAR, x -> integrate(x, FAR, y -> straddled(n, x, y)));
    double c4 =
        Math.sqrt(2.0 / (n - 1))
            * Math.exp(Gamma.logGamma(n / 2.0) - Gamma.logGamma((n - 1) / 2.0));
    return new ChartConstants(n, d2, Math.sqrt(squares - d2 * d2), c4);
  }

  /** Probability that x lies within the range of n values. */
  private static double covered(int n, double x) {
    double f = NORMAL.cumulativeProbability(x);
    return 1 - Math.pow(1 - f, n) - Math.pow(f, n);
  }

  private static double straddled(int n, double x, double y) {
    double below = NORMAL.cumulativeProbability(x);
    double upTo = NORMAL.cumulativeProbability(y);
    return 1 - Math.pow(upTo, n) - Math.pow(1 - below, n) + Math.pow(upTo - below, n);
  }

  private static double integrate(double from, double to, UnivariateFunction f) {
    double half = (to - from) / PANELS / 2;
    double sum = 0;
    for (int i = 0; i < PANELS; i++) {
      double middle = from + (2 * i + 1) * half;
      sum += half * GAUSS.integrate(t -> f.value(middle + half * t));
    }
    return sum;
  }

  /** Limits of a chart of means are ± this times the mean range. */
  public double a2() {
    return 3 / (d2 * Math.sqrt(n));
  }

  /** Limits of a chart of means are ± this times the mean standard deviation. */
  public double a3() {
    return 3 / (c4 * Math.sqrt(n));
  }

  /** Limits of a chart of single values are ± this times the mean moving range of n values. */
  public double e2() {
    return 3 / d2;
  }

  /** Lower limit of a chart of ranges, times the mean range. */
  public double lowerRange() {
    return Math.max(0, 1 - 3 * d3 / d2);
  }

  /** Upper limit of a chart of ranges (D4), times the mean range. */
  public double upperRange() {
    return 1 + 3 * d3 / d2;
  }

  /** Root of the expected square of the range: divisor of the range of one single group (d2*). */
  public double rootMeanSquareRange() {
    return Math.hypot(d2, d3);
  }
}
