package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Crossings whose place algebra gives, against the straight line between two samples. */
class CrossingTest {

  @Test
  void aStraightRampWithoutNoiseCrossesWhereItsLineDoes() {
    double[] ramp = sampled(t -> 3 * t);
    assertEquals(0, Crossing.of(ramp, 0, 10, 0).u(), 1e-12);
  }

  /**
   * x = t² crosses L at √L; the line between its neighbours is early by at most 1/8 of the bend.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1.3, 2.5, 6.1, 12, 20.2, 63.9})
  void aBentCurveLiesWithinItsU(double level) {
    double[] x = sampled(t -> t * t);
    double off = Math.abs(Math.sqrt(level) - byLine(x, level));
    double u = Crossing.of(x, 0, level, 0).u();
    assertTrue(off <= 2 * u, off + " of " + u);
  }

  /** A part d of the way to the kink and a level, each at random: off by d·T of a sample. */
  @Test
  void aKinkAnywhereBetweenTwoSamplesIsWithinItsUAsOftenAsStated() {
    SplittableRandom random = new SplittableRandom(21);
    int all = 5000;
    int within = 0;
    double squares = 0;
    double u = 0;
    for (int i = 0; i < all; i++) {
      double kink = 10 + random.nextDouble();
      double level = 3 * (11 - kink) * random.nextDouble();
      double[] x = sampled(t -> 3 * Math.max(0, t - kink));
      double off = kink + level / 3 - byLine(x, level);
      u = Crossing.of(x, 0, level, 0).u();
      squares += off * off / all;
      within += Math.abs(off) <= 2 * u ? 1 : 0;
    }
    assertEquals(Math.sqrt(squares), u, 0.01);
    // The product of two random numbers is below 2/3 so often: 2/3·(1 + ln 3/2) = 93.7 %.
    assertEquals(0.937, within / (double) all, 0.012);
  }

  /** Noise s of both samples moves the crossing by s/step·√(f² + (1 − f)²), f the place between. */
  @ParameterizedTest
  @CsvSource({"0.02, 10.2", "0.1, 11.5", "0.3, 10.9"})
  void noiseMovesItAsFarAsStated(double noise, double level) {
    SplittableRandom random = new SplittableRandom(20);
    double[] clean = sampled(t -> 3 * t);
    int within = 0;
    int all = 2000;
    for (int i = 0; i < all; i++) {
      double[] x = sampled(t -> 3 * t + noise * random.nextGaussian());
      double u = Crossing.of(x, 0, level, noise).u();
      within += Math.abs(byLine(x, level) - byLine(clean, level)) <= 2 * u ? 1 : 0;
    }
    assertTrue(within >= 0.95 * all, within + " of " + all);
    double widest = 2 * noise / 3; // 2 s over the step: more would be U for nothing
    assertTrue(2 * Crossing.of(clean, 0, level, noise).u() <= widest * 1.0001);
  }

  /**
   * A slow rise dwells within the noise of the level: each sample there may have been the first.
   */
  @Test
  void samplesNearTheLevelOnTheWayCount() {
    double[] slow = sampled(t -> t / 10);
    double few = Crossing.of(slow, 9, 1, 0.05).u();
    double many = Crossing.of(slow, 9, 1, 0.45).u();
    assertTrue(many > few + 0.5, many + " after " + few);
  }

  private static double[] sampled(java.util.function.DoubleUnaryOperator curve) {
    double[] x = new double[20];
    for (int i = 0; i < x.length; i++) {
      x[i] = curve.applyAsDouble(i);
    }
    return x;
  }

  private static double byLine(double[] x, double level) {
    int after = 1;
    while (x[after] < level) {
      after++;
    }
    return after - 1 + (level - x[after - 1]) / (x[after] - x[after - 1]);
  }
}
