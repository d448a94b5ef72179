package corewright.measures.uncertainty;

import corewright.measures.statistics.Descriptive;

/**
 * Mean of repeated readings that do not depend on each other, and how well they determine it. For
 * samples of a waveform, close enough that each resembles the last, there is {@code
 * wave.CorrelatedScatter}.
 *
 * @param mean of all readings
 * @param sd their standard deviation
 * @param count how many readings
 */
public record TypeA(double mean, double sd, int count) {

  /**
   * Readings that do not depend on each other.
   *
   * @see "JCGM 100:2008, 4.2.3"
   */
  public static TypeA independent(double... readings) {
    Descriptive d = Descriptive.of(readings);
    return new TypeA(d.mean(), d.sd(), d.count());
  }

  /** Standard uncertainty of the mean. */
  public double u() {
    return sd / Math.sqrt(count);
  }

  /** Degrees of freedom of {@link #u}, at least 1. */
  public double freedom() {
    return Math.max(1, count - 1);
  }
}
