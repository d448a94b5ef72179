package corewright.measures.meter;

import corewright.measures.Waveform;
import java.util.Arrays;

/**
 * A stretch of one channel in block means, few enough for methods that compare all pairs. What is
 * left over at the end is left out.
 */
final class Blocks {
  private final int size;
  private final double length_s;
  private final double[] mean;
  private final double scatter;

  private Blocks(int size, double length_s, double[] mean, double scatter) {
    this.size = size;
    this.length_s = length_s;
    this.mean = mean;
    this.scatter = scatter;
  }

  /**
   * @param most blocks
   */
  static Blocks of(Channel channel, int from, int to, int most) {
    int size = Math.max(1, (to - from + most - 1) / most);
    double[] mean = new double[(to - from) / size];
    double[] sd = new double[mean.length];
    Waveform wave = channel.wave();
    for (int b = 0; b < mean.length; b++) {
      int first = from + b * size;
      long sum = 0;
      double squares = 0; // about the first sample: the level itself would eat the digits
      for (int i = first; i < first + size; i++) {
        sum += wave.codeAt(i);
        double away = wave.codeAt(i) - wave.codeAt(first);
        squares += away * away;
      }
      double middle = (double) sum / size - wave.codeAt(first);
      mean[b] = wave.offset() + wave.lsb() * ((double) sum / size);
      sd[b] = wave.lsb() * Math.sqrt(Math.max(0, squares / size - middle * middle));
    }
    Arrays.sort(sd);
    double scatter = sd.length == 0 ? 0 : sd[sd.length / 2];
    return new Blocks(size, size / channel.sampleRate_Hz(), mean, scatter);
  }

  /** Samples in a block. */
  int size() {
    return size;
  }

  /**
   * Scatter of the samples inside a block, its median over the blocks: what a step or a slow drift
   * does not move; 0 where a block is one sample.
   */
  double scatter() {
    return scatter;
  }

  /** Of a block. */
  double length_s() {
    return length_s;
  }

  /** Mean of each block, in order; the caller's own copy. */
  double[] mean() {
    return mean.clone();
  }

  int count() {
    return mean.length;
  }

  /** Middles of the blocks, s from the first sample of the stretch. */
  double[] times_s() {
    double[] times = new double[mean.length];
    for (int b = 0; b < times.length; b++) {
      times[b] = (b + 0.5) * length_s;
    }
    return times;
  }
}
