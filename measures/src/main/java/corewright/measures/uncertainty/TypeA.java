package corewright.measures.uncertainty;

import corewright.measures.statistics.Autocorrelation;
import corewright.measures.statistics.Descriptive;

/**
 * Mean of repeated readings and how well they determine it.
 *
 * @param mean of all readings
 * @param sd their standard deviation, freed from the part that correlation hides
 * @param count how many readings
 * @param effectiveCount independent readings that would be worth as much, at most {@code count}
 */
public record TypeA(double mean, double sd, int count, double effectiveCount) {

  /**
   * Readings that do not depend on each other.
   *
   * @see "JCGM 100:2008, 4.2.3"
   */
  public static TypeA independent(double... readings) {
    Descriptive d = Descriptive.of(readings);
    return new TypeA(d.mean(), d.sd(), d.count(), d.count());
  }

  /**
   * Readings in order of time, close enough that each resembles the last.
   *
   * @see Autocorrelation#inefficiency
   * @see "JCGM 100:2008, 4.2.7"
   */
  public static TypeA correlated(double... readings) {
    Descriptive d = Descriptive.of(readings);
    if (d.sd() == 0) {
      return new TypeA(d.mean(), 0, d.count(), d.count());
    }
    double n = d.count();
    double inefficiency = Autocorrelation.inefficiency(readings);
    // Correlated readings pull their own mean along: E[s²] = σ²·(n − inefficiency)/(n − 1).
    double sd = d.sd() * Math.sqrt((n - 1) / Math.max(1, n - inefficiency));
    return new TypeA(d.mean(), sd, d.count(), n / inefficiency);
  }

  /** Standard uncertainty of the mean. */
  public double u() {
    return sd / Math.sqrt(effectiveCount);
  }

  /** Degrees of freedom of {@link #u}, at least 1. */
  public double freedom() {
    return Math.max(1, effectiveCount - 1);
  }
}
