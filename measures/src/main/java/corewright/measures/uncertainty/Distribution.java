package corewright.measures.uncertainty;

/**
 * How the possible values of an input lie about its estimate.
 *
 * @see "JCGM 100:2008, 4.3; JCGM 101:2008, 6.4"
 */
public enum Distribution {
  /** From repeated readings or a certificate that states a standard uncertainty. */
  NORMAL(Double.NaN),
  /** From few repeated readings: t with the input's degrees of freedom, wider than it says. */
  STUDENT(Double.NaN),
  /** Anywhere within ± a, all alike: resolution, a tolerance without more knowledge. */
  RECTANGULAR(3),
  /** Within ± a, more likely near the middle: a sum of two alike rectangular ones. */
  TRIANGULAR(6),
  /** Within ± a, more likely near the ends: a sine caught at any moment. */
  ARCSINE(2);

  private final double divisorSquared;

  Distribution(double divisorSquared) {
    this.divisorSquared = divisorSquared;
  }

  /**
   * Standard uncertainty of values within ± {@code halfWidth}.
   *
   * @throws IllegalArgumentException for a distribution that has no bounds
   */
  public double u(double halfWidth) {
    if (Double.isNaN(divisorSquared)) {
      throw new IllegalArgumentException(this + " has no half-width: give its u");
    }
    return halfWidth / Math.sqrt(divisorSquared);
  }

  /** Half-width from standard uncertainty: the inverse of {@link #u}. */
  double halfWidth(double u) {
    return u * Math.sqrt(divisorSquared);
  }
}
