package corewright.measures.spectrum;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineDoubtTest {

  /** Two normal components, one with a line in it: the root of their mean power, read often. */
  @ParameterizedTest
  @CsvSource({"0, 1", "1, 1", "3, 1", "10, 1", "0, 8", "1, 8", "10, 8"})
  void theIntervalHoldsTheLineAsOftenAsItSays(double line, int averages) {
    SplittableRandom random = new SplittableRandom(5);
    int rounds = 4000;
    int held = 0;
    for (int round = 0; round < rounds; round++) {
      double power = 0;
      for (int k = 0; k < averages; k++) {
        double one = line + random.nextGaussian();
        double other = random.nextGaussian();
        power += (one * one + other * other) / averages;
      }
      double read = Math.sqrt(power);
      held += Math.abs(read - line) <= 2 * LineDoubt.of(read, 1, 1, averages).u() ? 1 : 0;
    }
    assertEquals(0.975, held / (double) rounds, 0.025);
  }
}
