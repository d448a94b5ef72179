package corewright.measures.statistics;

/** Differences of numbers from their mean, each rounded once. */
final class Deviations {
  private final double mean;
  private final double[] d;

  private Deviations(double mean, double[] d) {
    this.mean = mean;
    this.d = d;
  }

  /**
   * @throws IllegalArgumentException if there are fewer than two numbers or one is not finite
   */
  static Deviations of(double[] x) {
    if (x.length < 2) {
      throw new IllegalArgumentException("scatter needs at least 2 numbers, there are " + x.length);
    }
    PreciseSum sum = new PreciseSum();
    for (int i = 0; i < x.length; i++) {
      if (!Double.isFinite(x[i])) {
        throw new IllegalArgumentException("number " + i + " is not finite: " + x[i]);
      }
      sum.add(x[i]);
    }
    int n = x.length;
    double mean = sum.value() / n;
    // What the division leaves: (sum − n·mean)/n, so that mean + rest is the mean to 100 bits.
    double rest = (Math.fma(-n, mean, sum.value()) + sum.rest()) / n;
    double[] d = new double[n];
    for (int i = 0; i < n; i++) {
      d[i] = (x[i] - mean) - rest;
    }
    return new Deviations(mean, d);
  }

  double mean() {
    return mean;
  }

  double sumOfSquares() {
    return sumOfProducts(0);
  }

  /** Σ d[i]·d[i + lag]. */
  double sumOfProducts(int lag) {
    PreciseSum sum = new PreciseSum();
    for (int i = 0; i + lag < d.length; i++) {
      sum.addProduct(d[i], d[i + lag]);
    }
    return sum.value();
  }
}
