package corewright.measures.meter;

import java.util.Arrays;

/**
 * Noise of a channel that moves: the standard deviation of a block's mean, from the smaller nine
 * tenths of the bends between three neighbours, which slopes and a few steps do not move.
 */
final class BlockNoise {
  private static final double KEPT = 0.9;

  /** Mean of |z| of a standard normal z where it is in the smaller nine tenths, below 1.645. */
  private static final double OF_KEPT = 0.6574;

  /** Deviation of a − 2b + c for independent values with a deviation of 1. */
  private static final double OF_BENDS = Math.sqrt(6);

  private BlockNoise() {}

  /**
   * @param size samples in a block
   * @return at least what rounding leaves in a single sample; 0 where there are not three blocks
   */
  static double of(Channel channel, int from, int to, int size) {
    int blocks = (to - from) / size;
    if (blocks < 3) {
      return 0;
    }
    double[] bends = new double[blocks - 2];
    double first = mean(channel, from, size);
    double second = mean(channel, from + size, size);
    for (int b = 2; b < blocks; b++) {
      double third = mean(channel, from + b * size, size);
      bends[b - 2] = Math.abs(first - 2 * second + third);
      first = second;
      second = third;
    }
    Arrays.sort(bends);
    int kept = (int) Math.ceil(KEPT * bends.length);
    double noise = Arrays.stream(bends, 0, kept).sum() / kept / OF_KEPT / OF_BENDS;
    return Math.max(noise, channel.resolution().ofOne() / Math.sqrt(size));
  }

  private static double mean(Channel channel, int from, int count) {
    long sum = 0;
    for (int i = from; i < from + count; i++) {
      sum += channel.wave().codeAt(i);
    }
    return channel.wave().offset() + channel.wave().lsb() * ((double) sum / count);
  }
}
