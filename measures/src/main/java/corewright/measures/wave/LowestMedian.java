package corewright.measures.wave;

import corewright.measures.Waveform;
import java.util.Arrays;

/**
 * The lowest median of any stretch of a given length: how low a level was held, whatever single
 * spikes did. The median of an even number of samples is the lower of the two middle ones.
 *
 * <p>No other median need be known: a stretch has a lower one than the lowest so far only when more
 * than half of its samples lie below that, and these are counted as the stretch moves on.
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
    int middle = (n - 1) / 2;
    int lowest = median(wave, from, n);
    int below = countBelow(wave, from, from + n, lowest);
    for (int i = from + n; i < to; i++) {
      below += (wave.codeAt(i) < lowest ? 1 : 0) - (wave.codeAt(i - n) < lowest ? 1 : 0);
      if (below > middle) {
        // One more than before: the middle one is the highest of those below.
        lowest = highestBelow(wave, i + 1 - n, i + 1, lowest);
        below = countBelow(wave, i + 1 - n, i + 1, lowest);
      }
    }
    return wave.offset() + wave.lsb() * lowest;
  }

  private static int median(Waveform wave, int from, int n) {
    int[] sorted = new int[n];
    for (int i = 0; i < n; i++) {
      sorted[i] = wave.codeAt(from + i);
    }
    Arrays.sort(sorted);
    return sorted[(n - 1) / 2];
  }

  private static int countBelow(Waveform wave, int from, int to, int limit) {
    int count = 0;
    for (int i = from; i < to; i++) {
      count += wave.codeAt(i) < limit ? 1 : 0;
    }
    return count;
  }

  private static int highestBelow(Waveform wave, int from, int to, int limit) {
    int highest = Integer.MIN_VALUE;
    for (int i = from; i < to; i++) {
      int code = wave.codeAt(i);
      highest = code < limit && code > highest ? code : highest;
    }
    return highest;
  }
}
