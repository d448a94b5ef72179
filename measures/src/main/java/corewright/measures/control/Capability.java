package corewright.measures.control;

import corewright.measures.conformity.Tolerance;

/**
 * How a stable process sits between its limits, both limits given.
 *
 * @param cp width of the tolerance over six standard deviations
 * @param cpk distance from the mean to the nearer limit over three standard deviations
 * @see "NIST/SEMATECH e-Handbook 6.1.6"
 */
public record Capability(double cp, double cpk) {

  /**
   * @param sd of the process, above 0
   * @throws IllegalArgumentException if a side of the tolerance is open
   */
  public static Capability of(double mean, double sd, Tolerance tolerance) {
    double low = (mean - tolerance.low()) / (3 * sd);
    double high = (tolerance.high() - mean) / (3 * sd);
    return new Capability(tolerance.capability(1.5 * sd), Math.min(low, high));
  }
}
