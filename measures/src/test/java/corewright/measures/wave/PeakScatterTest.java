package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PeakScatterTest {

  /**
   * The largest of 1000 standard normal values has a standard deviation of 0.3514.
   *
   * @see "Tippett, Biometrika 17 (1925) 364 (from memory)"
   */
  @Test
  void theLargestOfAThousandScattersAsTippettSays() {
    SplittableRandom random = new SplittableRandom(3);
    int rounds = 400;
    double sum = 0;
    for (int round = 0; round < rounds; round++) {
      double[] x = random.doubles(1000).map(u -> random.nextGaussian()).toArray();
      sum += PeakScatter.of(i -> x[i], x.length).highest() / rounds;
    }
    assertEquals(0.3514, sum, 0.04); // one scatters by a third of itself
  }

  @Test
  void aFirmTopDoesNotScatterAndASingleSpikeDoes() {
    PeakScatter firm = PeakScatter.of(i -> i % 2, 1000);
    assertEquals(0, firm.highest() + firm.lowest());
    PeakScatter spike = PeakScatter.of(i -> i == 500 ? 1 : 0, 1000);
    assertTrue(spike.highest() > 0.05, spike.toString());
    assertEquals(500, spike.highs().get(0));
  }
}
