package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CornersTest {
  /**
   * The dip that a corner between samples may have had, against sorting every bend; codes of few
   * and of many digits.
   */
  @ParameterizedTest
  @CsvSource({"3, 0", "30, 100", "400, 5000", "20000, 300000", "20000000, 400000000"})
  void dipAgainstSortingEveryBend(int noise, int corner) {
    Random random = new Random(noise);
    int[] codes = new int[5000];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = (int) Math.round(Math.max(-4, Math.min(4, random.nextGaussian())) * noise);
    }
    codes[1000] -= corner;
    double lsb = 1e-4;
    Waveform wave = Waveform.ofCodes(codes, lsb, 12, Unit.VOLT);
    double lowest = wave.at(1000);
    for (int[] window : new int[][] {{2000, 4990}, {0, 5000}, {2000, 2150}, {2000, 2000}}) {
      double found = Corners.dip(wave, 900, 1100, lowest, window[0], window[1]);
      double expected = plain(codes, lsb, lowest, window[0], window[1]);
      // Bends beyond 2^20 half codes are told apart to a millionth of the sharpest.
      assertEquals(expected, found, 1e-9 + 2e-6 * lsb * (8.0 * noise + 2.0 * corner));
    }
  }

  private static double plain(int[] codes, double lsb, double lowest, int from, int to) {
    double[] bends = new double[to - from];
    for (int i = from; i < to; i++) {
      bends[i - from] = bend(codes, i);
    }
    Arrays.sort(bends);
    double usual =
        bends.length == 0 ? 0 : 2 * Math.max(0, bends[(int) (0.99 * (bends.length - 1))]);
    double deepest = lowest;
    for (int i = 900; i < 1100; i++) {
      double corner = lsb * Math.max(0, bend(codes, i) - usual);
      deepest = Math.min(deepest, 12 + lsb * codes[i] - 0.477 * corner);
    }
    return lowest - deepest;
  }

  private static double bend(int[] codes, int i) {
    return i == 0 || i + 1 == codes.length
        ? 0
        : ((double) codes[i - 1] + codes[i + 1]) / 2 - codes[i];
  }
}
