package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FramingTest {

  /**
   * By hand from WIRE.md: a DATA frame has 10 + 4 bytes around its payload, 16 at the payload's
   * head, then two for each sample and channel. 11,520 bytes a second (115,200 bit/s, ten bits a
   * byte) with four samples a frame: 11,520 / (30 / 4 + 8) = 743, and 5 ms of 743 Hz are four
   * samples. 250 kHz in frames of 1,250 samples: 250,000 · (30 / 1,250 + 8) = 2,006,000.
   */
  @ParameterizedTest
  @CsvSource({
    "11520, 4, 743",
    "2006000, 4, 250000",
    "2005999, 4, 249999",
    "38, 4, 1",
    "37.9, 4, 0",
    "0, 4, 0"
  })
  void theHighestRateFillsTheLine(double bytesPerSecond, int channels, int expected_Hz) {
    assertEquals(expected_Hz, Framing.highestRate_Hz(bytesPerSecond, channels));
  }

  @Test
  void noHigherRateFitsThanTheHighest() {
    for (int bytesPerSecond : new int[] {100, 960, 5_760, 11_520, 46_080, 92_160, 300_000}) {
      int highest = Framing.highestRate_Hz(bytesPerSecond, 4);
      assertTrue(needs(highest) <= bytesPerSecond);
      for (int rate_Hz = highest + 1; rate_Hz < 2 * highest + 1000; rate_Hz++) {
        assertTrue(needs(rate_Hz) > bytesPerSecond, rate_Hz + " Hz in " + bytesPerSecond);
      }
    }
  }

  private static double needs(int rate_Hz) {
    return Framing.of(rate_Hz, 4).bytesPerSecond(4);
  }
}
