package corewright.measures.uncertainty;

import corewright.measures.statistics.Descriptive;
import corewright.measures.statistics.Interval;
import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Propagation of whole distributions: draws inputs, evaluates the model, looks at the results. The
 * cross-check of {@link Budget} where the model bends or a bounded input dominates. The same seed
 * gives the same numbers.
 *
 * @see "JCGM 101:2008, clause 7"
 */
public final class MonteCarlo {
  private final double[] sorted;

  private MonteCarlo(double[] sorted) {
    this.sorted = sorted;
  }

  /**
   * @param trials at least 1,000; 10⁶ give two significant digits of a 95 % interval (7.2.1)
   * @throws IllegalArgumentException if inputs that err together are not both NORMAL, or their
   *     correlations contradict each other
   */
  public static MonteCarlo of(Budget.Model model, Inputs inputs, int trials, long seed) {
    if (trials < 1000) {
      throw new IllegalArgumentException("at least 1000 trials are needed, not " + trials);
    }
    RandomGenerator random = new Well19937c(seed);
    double[][] root = root(inputs);
    TDistribution[] student = new TDistribution[inputs.size()];
    for (int i = 0; i < student.length; i++) {
      double freedom = inputs.get(i).freedom();
      student[i] = new TDistribution(random, Math.min(freedom, 1e6));
    }
    double[] results = new double[trials];
    double[] normal = new double[inputs.size()];
    double[] x = new double[inputs.size()];
    for (int trial = 0; trial < trials; trial++) {
      for (int i = 0; i < x.length; i++) {
        normal[i] = random.nextGaussian();
      }
      for (int i = 0; i < x.length; i++) {
        x[i] = draw(inputs.get(i), dot(root[i], normal), student[i], random);
      }
      results[trial] = model.at(x);
    }
    Arrays.sort(results);
    return new MonteCarlo(results);
  }

  private static double draw(
      Input input, double normal, TDistribution student, RandomGenerator random) {
    double half = input.distribution().halfWidth(input.u());
    return input.value()
        + switch (input.distribution()) {
          case NORMAL -> input.u() * normal;
          case STUDENT -> input.u() * student.sample();
          case RECTANGULAR -> half * (2 * random.nextDouble() - 1);
          case TRIANGULAR -> half * (random.nextDouble() + random.nextDouble() - 1);
          case ARCSINE -> half * Math.sin(2 * Math.PI * random.nextDouble());
        };
  }

  /** Root of the correlations: independent normal numbers times this are correlated ones. */
  private static double[][] root(Inputs inputs) {
    int n = inputs.size();
    double[][] r = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        r[i][j] = inputs.correlation(i, j);
      }
      if (inputs.correlated(i) && inputs.get(i).distribution() != Distribution.NORMAL) {
        throw new IllegalArgumentException(
            inputs.get(i).name() + " errs together with another input and is not NORMAL");
      }
    }
    return new CholeskyDecomposition(new Array2DRowRealMatrix(r, false)).getL().getData();
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  public double mean() {
    return Descriptive.of(sorted).mean();
  }

  /** Standard deviation of the results: the standard uncertainty. */
  public double u() {
    return Descriptive.of(sorted).sd();
  }

  /** Interval that leaves as many results below as above (7.7.2). */
  public Interval symmetricInterval(double level) {
    int q = inside(level);
    int low = (sorted.length - q) / 2;
    return new Interval(sorted[low], sorted[low + q], level);
  }

  /** Shortest interval with that share of the results (7.7.2, note). */
  public Interval shortestInterval(double level) {
    int q = inside(level);
    int best = 0;
    for (int low = 1; low + q < sorted.length; low++) {
      if (sorted[low + q] - sorted[low] < sorted[best + q] - sorted[best]) {
        best = low;
      }
    }
    return new Interval(sorted[best], sorted[best + q], level);
  }

  private int inside(double level) {
    Interval.requireLevel(level);
    return Math.min(sorted.length - 1, (int) Math.round(level * sorted.length));
  }
}
