package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.ChannelDoubt;
import corewright.measures.Measurement;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What stands beside the curve, against statistics that are made another way. */
class HoldWatchTest {
  private static final double LSB = 0.002;

  /** JCGM 100, 4.2.3: u of the mean of n independent ones is s/√n; samples here are independent. */
  @Test
  void theMeanAndItsUncertaintyAreThoseOfTheSamples() {
    SplittableRandom random = new SplittableRandom(3);
    HoldMean mean = new HoldMean();
    mean.begin();
    int batch = 500;
    int batches = 400;
    double sum = 0;
    for (int b = 0; b < batches; b++) {
      short[] codes = new short[batch];
      for (int i = 0; i < batch; i++) {
        codes[i] = (short) (24_000 + 40 * (random.nextDouble() - 0.5) * Math.sqrt(12));
        sum += codes[i];
      }
      mean.add(codes, 0, batch);
    }
    Measurement m = mean.soFar(LSB, 0, new ChannelDoubt(0, 0)).orElseThrow();
    assertEquals(LSB * sum / (batch * batches), m.value(), 1e-9);
    double expected = LSB * 40 / Math.sqrt((double) batch * batches);
    assertEquals(expected, m.u(), 0.15 * expected); // u of 400 means: 1/√(2·399) = 3.5 %, 4 of them
    Measurement known = mean.soFar(LSB, 0, new ChannelDoubt(0.0003, 0.012)).orElseThrow();
    assertEquals(Math.hypot(0.0003 * m.value(), 0.012), known.u(), 1e-4);
  }

  @Test
  void tooFewFramesSayNothing() {
    HoldMean mean = new HoldMean();
    mean.begin();
    for (int i = 0; i < 4; i++) {
      mean.add(new short[] {1, 2}, 0, 2);
      assertTrue(mean.soFar(LSB, 0, ChannelDoubt.UNKNOWN).isEmpty());
    }
  }

  @Test
  void theLowestInputIsTheLowestOfTheMiddleOnes() {
    SplittableRandom random = new SplittableRandom(4);
    LowestInput lowest = new LowestInput();
    lowest.begin(7_000); // seven samples a millisecond
    int expected = Integer.MAX_VALUE;
    for (int block = 0; block < 2000; block++) {
      short[] codes = new short[7];
      for (int i = 0; i < 7; i++) {
        codes[i] = (short) random.nextInt(-50, 50);
      }
      lowest.add(codes);
      short[] sorted = codes.clone();
      Arrays.sort(sorted);
      expected = Math.min(expected, sorted[3]);
    }
    assertEquals(expected, lowest.code().orElseThrow());
  }
}
