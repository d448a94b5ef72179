package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against sorting every stretch. */
class LowestMedianTest {
  @ParameterizedTest
  @CsvSource({
    "noise, 1",
    "noise, 2",
    "noise, 7",
    "noise, 100",
    "noise, 5000",
    "falling, 1",
    "falling, 10",
    "falling, 11",
    "wave, 50",
    "wave, 51",
    "steps, 20",
    "flat, 9"
  })
  void isTheLowestOfAll(String kind, int length) {
    for (int seed = 0; seed < 5; seed++) {
      int[] codes = codes(kind, new Random(seed));
      Waveform wave = Waveform.ofCodes(codes, 0.25, -3, Unit.VOLT);
      for (int[] range : new int[][] {{0, codes.length}, {3, 4}, {17, 1200}}) {
        double found = LowestMedian.of(wave, range[0], range[1], length);
        assertEquals(plain(codes, range[0], range[1], length) * 0.25 - 3, found);
      }
    }
  }

  private static int[] codes(String kind, Random random) {
    int[] codes = new int[2000];
    for (int i = 0; i < codes.length; i++) {
      double noise = 5 * random.nextGaussian();
      codes[i] =
          (int)
              switch (kind) {
                case "noise" -> 40 * noise;
                case "falling" -> -7 * i + noise;
                case "wave" -> 900 * Math.sin(i / 60.0) + noise;
                case "steps" -> 300 * (i / 70 % 5) + noise;
                default -> 12;
              };
    }
    return codes;
  }

  private static int plain(int[] codes, int from, int to, int length) {
    int n = Math.min(length, to - from);
    int lowest = Integer.MAX_VALUE;
    for (int i = from; i + n <= to; i++) {
      int[] sorted = Arrays.copyOfRange(codes, i, i + n);
      Arrays.sort(sorted);
      lowest = Math.min(lowest, sorted[(n - 1) / 2]);
    }
    return lowest;
  }

  @Test
  void refusesNoSamples() {
    Waveform wave = Waveform.ofCodes(new int[] {1, 2}, 1, 0, Unit.VOLT);
    assertThrows(IllegalArgumentException.class, () -> LowestMedian.of(wave, 1, 1, 3));
  }
}
