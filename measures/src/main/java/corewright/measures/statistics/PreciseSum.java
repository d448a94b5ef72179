package corewright.measures.statistics;

/**
 * A running sum that carries twice the digits of a double: what each addition rounds away is kept
 * and added up beside it. The result is as if summed with about 106 bits and rounded once.
 *
 * @see "Ogita, Rump and Oishi, Accurate sum and dot product, SIAM J. Sci. Comput. 26 (2005) 1955,
 *     algorithms 4.4 (Sum2) and 5.3 (Dot2)"
 */
public final class PreciseSum {
  private double high;
  private double low;

  /** Sum of all terms. */
  public static double of(double... terms) {
    PreciseSum sum = new PreciseSum();
    for (double term : terms) {
      sum.add(term);
    }
    return sum.value();
  }

  public PreciseSum add(double term) {
    double total = high + term;
    double virtual = total - high;
    low += (high - (total - virtual)) + (term - virtual); // exact: Knuth's two-sum
    high = total;
    return this;
  }

  /** Adds a·b without rounding the product. */
  public PreciseSum addProduct(double a, double b) {
    double product = a * b;
    add(product);
    low += Math.fma(a, b, -product);
    return this;
  }

  /** The sum, rounded once. */
  public double value() {
    return high + low;
  }

  /** What {@link #value} rounded away. */
  public double rest() {
    double total = high + low;
    return low - (total - high);
  }
}
