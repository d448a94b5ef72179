package corewright.measures;

import org.apache.commons.math3.distribution.NormalDistribution;

/** Probability that a true value conforms, given what was measured. Pure. */
public final class Conformity {
  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

  private Conformity() {}

  /**
   * Probability that the true value is at least {@code limit}, for a normal distribution about the
   * measured value. Without uncertainty it is 0 or 1, the limit itself conforming.
   *
   * @param limit in the unit of the measurement
   * @return 0 to 1
   * @see "JCGM 106:2012, 7.3 one-sided tolerance intervals with normal PDFs"
   */
  public static double atLeast(Measurement measured, double limit) {
    double distance = measured.value() - limit;
    if (measured.u() == 0) {
      return distance >= 0 ? 1 : 0;
    }
    return STANDARD.cumulativeProbability(distance / measured.u());
  }

  /** Probability that the true value is at most {@code limit}; see {@link #atLeast}. */
  public static double atMost(Measurement measured, double limit) {
    return atLeast(new Measurement(-measured.value(), measured.u(), measured.unit()), -limit);
  }

  /**
   * Probability that the true value lies between two limits.
   *
   * @see "JCGM 106:2012, 7.4 two-sided tolerance intervals with normal PDFs"
   */
  public static double within(Measurement measured, double low, double high) {
    if (low > high) {
      throw new IllegalArgumentException("low limit " + low + " is above high limit " + high);
    }
    return Math.max(0, atLeast(measured, low) - (1 - atMost(measured, high)));
  }
}
