package corewright.measures.wave;

import corewright.measures.Waveform;
import java.util.Arrays;

/**
 * The lowest median of any stretch of a given length: how low a level was held, whatever single
 * spikes did. The median of an even number of samples is the lower of the two middle ones.
 */
public final class LowestMedian {
  private LowestMedian() {}

  /**
   * @param length samples in each stretch; stretches begin at every sample, and a range shorter
   *     than this is one stretch
   */
  public static double of(Waveform wave, int from, int to, int length) {
    Stretch.require(wave, from, to, 1);
    int n = Math.max(1, Math.min(length, to - from));
    int[] sorted = new int[n];
    for (int i = 0; i < n; i++) {
      sorted[i] = wave.codeAt(from + i);
    }
    Arrays.sort(sorted);
    int middle = (n - 1) / 2;
    int lowest = sorted[middle];
    for (int i = from + n; i < to; i++) {
      replace(sorted, wave.codeAt(i - n), wave.codeAt(i));
      lowest = Math.min(lowest, sorted[middle]);
    }
    return wave.offset() + wave.lsb() * lowest;
  }

  /** Takes one value out of a sorted array and puts another in, moving only what lies between. */
  private static void replace(int[] sorted, int out, int in) {
    if (out == in) {
      return;
    }
    int at = Arrays.binarySearch(sorted, out);
    int place = Arrays.binarySearch(sorted, in);
    int target = place >= 0 ? place : -place - 1;
    if (in > out) {
      System.arraycopy(sorted, at + 1, sorted, at, target - 1 - at);
      sorted[target - 1] = in;
    } else {
      System.arraycopy(sorted, target, sorted, target + 1, at - target);
      sorted[target] = in;
    }
  }
}
