package corewright.measures.conformity;

/**
 * The values that conform.
 *
 * @param low −∞ where there is only an upper limit
 * @param high ∞ where there is only a lower one
 * @see "JCGM 106:2012, 3.3.5 tolerance interval"
 */
public record Tolerance(double low, double high) {
  public Tolerance {
    if (!(low < high)) {
      throw new IllegalArgumentException("low limit " + low + " is not below high limit " + high);
    }
  }

  public static Tolerance atLeast(double low) {
    return new Tolerance(low, Double.POSITIVE_INFINITY);
  }

  public static Tolerance atMost(double high) {
    return new Tolerance(Double.NEGATIVE_INFINITY, high);
  }

  /**
   * Measurement capability index: width over four standard uncertainties. From 2 to 4 on, the
   * measurement decides little and the unit decides; at 1, U fills half the tolerance on either
   * side.
   *
   * @throws IllegalArgumentException if one side is open
   * @see "JCGM 106:2012, 7.6.3, Cm = T/(4u)"
   */
  public double capability(double u) {
    if (Double.isInfinite(high - low)) {
      throw new IllegalArgumentException("a tolerance with an open side has no width");
    }
    return (high - low) / (4 * u);
  }

  /**
   * What is accepted so that little of it does not conform: each limit moved inwards.
   *
   * @param width guard band, in the unit of the limits; negative accepts more than conforms
   * @throws IllegalArgumentException if the guard bands leave nothing between them
   * @see "JCGM 106:2012, 8.3.2 guarded acceptance"
   */
  public Tolerance guarded(double width) {
    if (!(low + width < high - width)) {
      throw new IllegalArgumentException(
          "guard bands of "
              + width
              + " leave nothing to accept between "
              + low
              + " and "
              + high
              + ": a smaller uncertainty is needed");
    }
    return new Tolerance(low + width, high - width);
  }
}
