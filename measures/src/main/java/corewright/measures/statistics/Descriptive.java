package corewright.measures.statistics;

/**
 * Mean and scatter of a list of numbers, correct to the last digit or two whatever their offset:
 * the mean carries twice the digits of a double, and squares are of differences from it.
 *
 * @param count how many numbers, at least two
 * @param mean arithmetic mean
 * @param sd standard deviation with denominator n − 1
 * @see "JCGM 100:2008, 4.2.1 and 4.2.2"
 */
public record Descriptive(int count, double mean, double sd) {

  /**
   * @param x at least two finite numbers
   */
  public static Descriptive of(double... x) {
    Deviations deviations = Deviations.of(x);
    return new Descriptive(
        x.length, deviations.mean(), Math.sqrt(deviations.sumOfSquares() / (x.length - 1)));
  }

  /** Standard deviation of the mean of independent numbers: s/√n (JCGM 100, 4.2.3). */
  public double ofMean() {
    return sd / Math.sqrt(count);
  }
}
