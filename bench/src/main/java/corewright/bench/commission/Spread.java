package corewright.bench.commission;

/**
 * What a channel read over a while.
 *
 * @param mean in the channel's unit
 * @param sd standard deviation of one sample about it
 * @param n samples
 * @param unit of all of it
 * @param lsb value of one code
 * @param clipped a code was at an end of its range: the rest says little
 */
public record Spread(double mean, double sd, long n, String unit, double lsb, boolean clipped) {

  /**
   * Standard uncertainty of the standard deviation itself.
   *
   * @see "JCGM 100:2008, E.4.3"
   */
  public double uSd() {
    return sd / Math.sqrt(2.0 * Math.max(1, n - 1));
  }

  /** Standard uncertainty of the mean: noise, and the step of the codes where there is none. */
  public double u() {
    return Math.hypot(sd / Math.sqrt((double) Math.max(1, n)), lsb / Math.sqrt(12));
  }
}
