package corewright.measures.uncertainty;

import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;

/**
 * Two inputs that err together.
 *
 * @param one name of an input
 * @param other name of another
 * @param r correlation coefficient, −1 to 1
 * @see "JCGM 100:2008, 5.2.2"
 */
public record Correlation(String one, String other, double r) {
  public Correlation {
    if (!(Math.abs(r) <= 1)) {
      throw new IllegalArgumentException(
          "a correlation lies between −1 and 1: " + r + " of " + one + " and " + other);
    }
    if (one.equals(other)) {
      throw new IllegalArgumentException("an input correlates with another, not itself: " + one);
    }
  }

  /**
   * From readings that were taken together, one of each at a time.
   *
   * @see "JCGM 100:2008, 5.2.3, equation 17"
   */
  public static Correlation ofPairs(String one, double[] x, String other, double[] y) {
    return new Correlation(one, other, new PearsonsCorrelation().correlation(x, y));
  }
}
