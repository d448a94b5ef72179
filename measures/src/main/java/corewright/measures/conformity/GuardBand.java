package corewright.measures.conformity;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * The usual guard bands, as multiples of U = 2u.
 *
 * @see "ILAC-G8:09/2019, table 1 (from memory)"
 */
public enum GuardBand {
  SIX_SIGMA(3),
  THREE_SIGMA(1.5),
  FULL(1),
  ISO_14253_1(0.83),
  SIMPLE_ACCEPTANCE(0),
  UNCRITICAL(-1);

  private final double perU;

  GuardBand(double perU) {
    this.perU = perU;
  }

  /** Guard band for a standard uncertainty, in its unit. */
  public double width(double u) {
    return perU * 2 * u;
  }

  /**
   * Largest probability that something accepted does not conform, one limit near: that of a reading
   * just on the acceptance limit.
   */
  public double specificRisk() {
    return new NormalDistribution(null, 0, 1).cumulativeProbability(-2 * perU);
  }
}
