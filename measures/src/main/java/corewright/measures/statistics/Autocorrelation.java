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

  /**
   * How many numbers of a sequence are worth one independent number: 1 + 2·Σρ, at least 1.
   * Autocorrelations are added up in pairs for as long as a pair is positive: what follows is
   * noise. Cost grows as n times the correlation time; average a long record in blocks first.
   *
   * @see "Geyer, Practical Markov chain Monte Carlo, Statistical Science 7 (1992) 473, section 3.3"
   */
  public static double inefficiency(double[] x) {
    Deviations deviations = Deviations.of(x);
    double zero = deviations.sumOfSquares();
    if (zero == 0) {
      return 1;
    }
    double sum = 1;
    for (int lag = 1; lag + 1 < x.length / 2; lag += 2) {
      double pair = deviations.sumOfProducts(lag) + deviations.sumOfProducts(lag + 1);
      if (pair <= 0) {
        break;
      }
      sum += 2 * pair / zero;
    }
    return Math.max(1, Math.min(x.length, sum));
  }
}
