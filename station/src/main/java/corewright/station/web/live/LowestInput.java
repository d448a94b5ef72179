package corewright.station.web.live;

import java.util.OptionalInt;

/**
 * How low the input was held within a hold: the lowest of the medians of 1 ms, one millisecond
 * after the other. The record looks at every stretch of 1 ms and can only find it as low or lower.
 */
final class LowestInput {
  private static final int BLOCKS_PER_S = 1000;

  private short[] block = new short[1];
  private int filled;
  private int lowest = Integer.MAX_VALUE;

  /** A hold begins. */
  void begin(int rate_Hz) {
    block = new short[Math.max(1, rate_Hz / BLOCKS_PER_S)];
    filled = 0;
    lowest = Integer.MAX_VALUE;
  }

  void add(short[] codes) {
    for (short code : codes) {
      block[filled++] = code;
      if (filled == block.length) {
        lowest = Math.min(lowest, median(block));
        filled = 0;
      }
    }
  }

  /** The lowest code so far. */
  OptionalInt code() {
    return lowest == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(lowest);
  }

  /** The lower of the two middle ones; found by parting, in a time that grows with the length. */
  private static short median(short[] values) {
    int low = 0;
    int high = values.length - 1;
    int wanted = high / 2;
    while (low < high) {
      short pivot = values[(low + high) >>> 1];
      int i = low;
      int j = high;
      while (i <= j) {
        while (values[i] < pivot) {
          i++;
        }
        while (values[j] > pivot) {
          j--;
        }
        if (i <= j) {
          short swap = values[i];
          values[i++] = values[j];
          values[j--] = swap;
        }
      }
      if (wanted <= j) {
        high = j;
      } else if (wanted >= i) {
        low = i;
      } else {
        break;
      }
    }
    return values[wanted];
  }
}
