package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CorrelatedScatterTest {
  /** Closed form for x[i] = φ·x[i−1] + noise: each is worth (1 − φ)/(1 + φ) independent ones. */
  @ParameterizedTest
  @CsvSource({"0, 1, 0.15", "0.5, 3, 0.15", "0.9, 19, 0.2"})
  void findsWhatEachSampleIsWorth(double phi, double inefficiency, double tolerance) {
    double[] x = sequence(100_000, phi, new Well19937c(1));
    CorrelatedScatter scatter = aboutItsMean(x);
    assertEquals(1, x.length / scatter.effectiveCount() / inefficiency, tolerance);
  }

  /** Seeded sequences: intervals with k = 2 hold the mean in 94 to 96.5 %. */
  @ParameterizedTest
  @CsvSource({"1000, 0", "1000, 0.5", "3000, 0.8"})
  void coversTheTruthAsOftenAsStated(int n, double phi) {
    RandomGenerator random = new Well19937c(17);
    int runs = 2000;
    int covered = 0;
    for (int run = 0; run < runs; run++) {
      double[] x = sequence(n, phi, random);
      covered += Math.abs(mean(x)) <= 2 * aboutItsMean(x).ofMean() ? 1 : 0;
    }
    assertEquals(0.9525, (double) covered / runs, 0.0125 + 0.005);
  }

  /**
   * Ripple of ten or a hundred times the noise is not counted as noise: what is stated is 1.3 times
   * the empirical half-width at most, and holds the mean in 94 % or more.
   */
  @ParameterizedTest
  @CsvSource({"2000, 10, 0.11", "2000, 100, 0.0517", "4000, 30, 0.31", "4000, 100, 0.43"})
  void strongRippleIsNotNoise(int n, double ripple, double cyclesPerSample) {
    RandomGenerator random = new Well19937c(3);
    int runs = 1000;
    double[] errors = new double[runs];
    double[] stated = new double[runs];
    int covered = 0;
    for (int run = 0; run < runs; run++) {
      double phase = 2 * Math.PI * random.nextDouble();
      double f = cyclesPerSample * (1 + 0.02 * random.nextDouble());
      double[] x = sequence(n, 0, random);
      for (int i = 0; i < n; i++) {
        x[i] += ripple * Math.sin(2 * Math.PI * f * i + phase);
      }
      errors[run] = Math.abs(mean(x));
      stated[run] = 2 * aboutItsMean(x).ofMean();
      covered += errors[run] <= stated[run] ? 1 : 0;
    }
    Arrays.sort(errors);
    double halfWidth = errors[(int) (0.95 * runs)];
    double median = Arrays.stream(stated).sorted().toArray()[runs / 2];
    assertTrue(covered >= 0.94 * runs, covered + " of " + runs);
    assertTrue(median <= 1.3 * halfWidth, median + " for " + halfWidth);
  }

  @Test
  void whatDoesNotScatterHasNoUncertainty() {
    assertEquals(0, CorrelatedScatter.of(i -> 0, 1000, 1).ofMean());
  }

  private static CorrelatedScatter aboutItsMean(double[] x) {
    double mean = mean(x);
    return CorrelatedScatter.of(i -> x[i] - mean, x.length, 1);
  }

  private static double mean(double[] x) {
    double sum = 0;
    for (double value : x) {
      sum += value / x.length;
    }
    return sum;
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
