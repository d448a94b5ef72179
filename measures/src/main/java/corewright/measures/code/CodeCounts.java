package corewright.measures.code;

import java.util.Arrays;

/**
 * Counts how often each code occurs. From the counts follow sum, sum of squares, extremes and any
 * quantile exactly, and counting is faster than computing any two of them.
 *
 * <p>Neighbouring codes are counted in different {@value #LANES} lanes of one table: signals dwell
 * on few codes, and a processor that increments the same count twice in a row waits for the first.
 * Costs 2 MiB; keep one and use it again. Not thread-safe.
 */
public final class CodeCounts {
  private static final int LANES = 8;
  private static final int VALUES = 1 << 16;
  private static final int BLOCK = 256;

  private final int[] lanes = new int[LANES * VALUES];
  private final int[] counts = new int[VALUES];
  private int count;
  private int near;

  /**
   * Counts codes {@code [from, to)}.
   *
   * @throws IllegalArgumentException if they are not there, or are more than 2³¹ with those before
   */
  public void add(Codes codes, int from, int to) {
    codes.require(from, to);
    if ((long) count + (to - from) > Integer.MAX_VALUE) {
      throw new IllegalArgumentException("more than " + Integer.MAX_VALUE + " codes to count");
    }
    if (from == to) {
      return;
    }
    near = count == 0 ? codes.at(from) : near;
    count += to - from;
    int first = from + (from & 1);
    int last = to - (to & 1);
    if (first > from) {
      lanes[codes.at(from) & 0xFFFF]++;
    }
    if (last < to) {
      lanes[codes.at(last) & 0xFFFF]++;
    }
    int inFours = first + ((last - first) & -8);
    count(lanes, codes.pairs(), first >> 1, inFours >> 1);
    for (int i = inFours; i < last; i++) {
      lanes[codes.at(i) & 0xFFFF]++;
    }
  }

  /** Counts whole fours of pairs. */
  private static void count(int[] lanes, int[] pairs, int from, int to) {
    for (int i = from; i < to; i += 4) {
      int a = pairs[i];
      int b = pairs[i + 1];
      int c = pairs[i + 2];
      int d = pairs[i + 3];
      lanes[a & 0xFFFF]++;
      lanes[(a >>> 16) | VALUES]++;
      lanes[(b & 0xFFFF) | (2 * VALUES)]++;
      lanes[(b >>> 16) | (3 * VALUES)]++;
      lanes[(c & 0xFFFF) | (4 * VALUES)]++;
      lanes[(c >>> 16) | (5 * VALUES)]++;
      lanes[(d & 0xFFFF) | (6 * VALUES)]++;
      lanes[(d >>> 16) | (7 * VALUES)]++;
    }
  }

  /** Codes counted so far. */
  public int count() {
    return count;
  }

  /**
   * Statistics of what was counted; counting begins anew.
   *
   * @throws IllegalArgumentException if nothing was counted
   */
  public CodeStatistics take() {
    if (count == 0) {
      throw new IllegalArgumentException("statistics of no codes are asked for");
    }
    // Outwards from the first code, until every code has been found.
    int low = near & -BLOCK;
    int high = low + BLOCK;
    int found = fold(low);
    while (found < count) {
      if (low > Short.MIN_VALUE) {
        low -= BLOCK;
        found += fold(low);
      }
      if (high <= Short.MAX_VALUE) {
        found += fold(high);
        high += BLOCK;
      }
    }
    CodeStatistics statistics = statistics(low, high);
    count = 0;
    return statistics;
  }

  /** Moves the lanes of one block of codes into their counts; how many there are in all. */
  private int fold(int block) {
    int at = block & 0xFFFF;
    for (int lane = at; lane < lanes.length; lane += VALUES) {
      for (int i = 0; i < BLOCK; i++) {
        counts[at + i] += lanes[lane + i];
      }
      Arrays.fill(lanes, lane, lane + BLOCK, 0);
    }
    int sum = 0;
    for (int i = at; i < at + BLOCK; i++) {
      sum += counts[i];
    }
    return sum;
  }

  /** Of codes {@code [low, high)}, whose counts begin anew. */
  private CodeStatistics statistics(int low, int high) {
    long sum = 0;
    long squares = 0;
    int lowest = Integer.MAX_VALUE;
    int highest = 0;
    int lower = 0;
    int upper = 0;
    int below = 0;
    for (int code = low; code < high; code++) {
      long here = counts[code & 0xFFFF];
      if (here > 0) {
        counts[code & 0xFFFF] = 0;
        lowest = Math.min(lowest, code);
        highest = code;
        sum += here * code;
        squares += here * code * code;
        lower = below <= (count - 1) / 2 ? code : lower;
        upper = below <= count / 2 ? code : upper;
        below += (int) here;
      }
    }
    return new CodeStatistics(count, sum, squares, lowest, highest, lower, upper);
  }
}
