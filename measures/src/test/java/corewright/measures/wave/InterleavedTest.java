package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class InterleavedTest {

  /** Halves of 0, 1, 0, 1 … lie half apart from the mean, thirds of an even number do not. */
  @Test
  void aSeriesOfPeriodTwoShowsInTheHalvesAlone() {
    assertEquals(0.25 / 3, Interleaved.of(i -> i % 2, 600).varianceOfMean(), 1e-15);
  }

  /** Thirds of 0, 0, 1, … have the means 0, 0, 1: mean square distance from 1/3 is 2/9. */
  @Test
  void aSeriesOfPeriodThreeShowsInTheThirdsAlone() {
    assertEquals(2.0 / 9 / 3, Interleaved.of(i -> i % 3 == 2 ? 1 : 0, 600).varianceOfMean(), 1e-15);
  }

  /** The variance of a mean of n independent values is σ²/n (JCGM 100, 4.2.3). */
  @Test
  void whiteNoiseHasItsOwnVarianceOfTheMean() {
    SplittableRandom random = new SplittableRandom(1);
    int rounds = 4000;
    double sum = 0;
    for (int round = 0; round < rounds; round++) {
      double[] x = random.doubles(101).map(u -> u - 0.5).toArray();
      sum += Interleaved.of(i -> x[i], x.length).varianceOfMean() / rounds;
    }
    // Chi-square with three degrees of freedom: relative deviation √(2/3) of each round.
    double expected = 1.0 / 12 / 101;
    assertEquals(expected, sum, 4 * Math.sqrt(2.0 / 3 / rounds) * expected);
  }
}
