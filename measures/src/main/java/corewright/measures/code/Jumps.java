package corewright.measures.code;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Finds where the codes change by more than a threshold from one sample to the next: the edges of a
 * load that steps within one sample. A slower edge, and steps in noise above half the threshold,
 * are what {@code measures.hold} is for.
 *
 * <p>No code that far from its neighbour can be in a stretch that stays within half the threshold
 * of the code before it, and most stretches do. One that does not is halved.
 *
 * @param threshold a larger change is a jump, codes, above 0
 */
public record Jumps(int threshold) {
  public Jumps {
    if (threshold < 1 || threshold > 0xFFFF) {
      throw new IllegalArgumentException("a jump of " + threshold + " codes is not one");
    }
  }

  /** Every i in {@code [from, to)} whose code is a jump away from that of i − 1. */
  public int[] in(Codes codes, int from, int to) {
    codes.require(from, to);
    IntStream.Builder found = IntStream.builder();
    int start = Math.max(1, from);
    while (start < to) {
      int end = Math.min(to, (start & -Band.STRETCH) + Band.STRETCH);
      look(codes, start, end, found);
      start = end;
    }
    return found.build().toArray();
  }

  private void look(Codes codes, int from, int to, IntStream.Builder found) {
    int before = codes.at(from - 1);
    Band calm = new Band(before - threshold / 2, before + threshold / 2);
    if (!calm.isLeft(codes.pairs(), from >> 1, (to + 1) >> 1)) {
      return;
    }
    if (to - from > Band.SHORT) {
      int middle = (from + to) >>> 1;
      look(codes, from, middle, found);
      look(codes, middle, to, found);
      return;
    }
    for (int i = from; i < to; i++) {
      if (Math.abs(codes.at(i) - codes.at(i - 1)) > threshold) {
        found.add(i);
      }
    }
  }

  /**
   * The first jump of each cluster.
   *
   * @param jumps in order
   * @param apart a jump at most this many samples after another belongs to the same cluster
   */
  public static int[] firstOfEach(int[] jumps, int apart) {
    int[] first = new int[jumps.length];
    int count = 0;
    for (int i = 0; i < jumps.length; i++) {
      if (i == 0 || jumps[i] - jumps[i - 1] > apart) {
        first[count++] = jumps[i];
      }
    }
    return Arrays.copyOf(first, count);
  }
}
