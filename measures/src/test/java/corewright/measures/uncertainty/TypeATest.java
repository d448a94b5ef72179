package corewright.measures.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.statistics.Autocorrelation;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypeATest {

  /** Closed form for x[i] = φ·x[i−1] + noise: each is worth (1 − φ)/(1 + φ) independent ones. */
  @ParameterizedTest
  @CsvSource({"0, 1, 0.15", "0.5, 3, 0.15", "0.9, 19, 0.2"})
  void findsWhatEachReadingIsWorth(double phi, double inefficiency, double tolerance) {
    double[] x = sequence(100_000, phi, new Well19937c(1));
    assertEquals(1, Autocorrelation.inefficiency(x) / inefficiency, tolerance);
  }

  /** 4,000 seeded sequences: intervals of 95 % by Student's t cover 94 to 96.5 %. */
  @ParameterizedTest
  @CsvSource({"300, 0", "300, 0.5", "1000, 0.8"})
  void coversTheTruthAsOftenAsStated(int n, double phi) {
    RandomGenerator random = new Well19937c(17);
    int runs = 4000;
    int covered = 0;
    for (int run = 0; run < runs; run++) {
      TypeA a = TypeA.correlated(sequence(n, phi, random));
      double t = new TDistribution(null, a.freedom()).inverseCumulativeProbability(0.975);
      covered += Math.abs(a.mean()) <= t * a.u() ? 1 : 0;
    }
    assertEquals(0.9525, (double) covered / runs, 0.0125);
  }

  @Test
  void leavesIndependentReadingsAsTheyAre() {
    TypeA a = TypeA.independent(1, 2, 3, 4, 5);
    assertEquals(3, a.mean());
    assertEquals(Math.sqrt(2.5 / 5), a.u(), 1e-15);
    assertEquals(4, a.freedom());
    assertEquals(0, TypeA.correlated(7, 7, 7).u());
  }

  private static double[] sequence(int n, double phi, RandomGenerator random) {
    double[] x = new double[n];
    double last = random.nextGaussian() / Math.sqrt(1 - phi * phi);
    for (int i = 0; i < n; i++) {
      last = phi * last + random.nextGaussian();
      x[i] = last;
    }
    return x;
  }
}
