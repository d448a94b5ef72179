package corewright.measures.statistics;

/**
 * How much each number of a sequence says about the one that follows it at a distance.
 *
 * @see "Box and Jenkins, Time Series Analysis: the estimator with n − lag products over n squares"
 */
public final class Autocorrelation {
  private Autocorrelation() {}

  /**
   * Sample autocorrelation coefficient: −1 to 1, biased towards 0 by about lag/n.
   *
   * @param lag 0 to x.length − 1
   * @throws IllegalArgumentException if all numbers are the same: there is no scatter to compare
   */
  public static double of(double[] x, int lag) {
    if (lag < 0 || lag >= x.length) {
      throw new IllegalArgumentException("lag " + lag + " of " + x.length + " numbers");
    }
    Deviations deviations = Deviations.of(x);
    double zero = deviations.sumOfSquares();
    if (zero == 0) {
      throw new IllegalArgumentException("all numbers are the same: no autocorrelation");
    }
    return deviations.sumOfProducts(lag) / zero;
  }
}
