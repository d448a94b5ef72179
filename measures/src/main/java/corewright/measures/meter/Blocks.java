package corewright.measures.meter;

import corewright.measures.Waveform;

/**
 * A stretch of one channel in block means, few enough for methods that compare all pairs. What is
 * left over at the end is left out.
 */
final class Blocks {
  private final double length_s;
  private final double[] mean;

  private Blocks(double length_s, double[] mean) {
    this.length_s = length_s;
    this.mean = mean;
  }

  /**
   * @param most blocks
   */
  static Blocks of(Channel channel, int from, int to, int most) {
    int size = Math.max(1, (to - from + most - 1) / most);
    double[] mean = new double[(to - from) / size];
    Waveform wave = channel.wave();
    for (int b = 0; b < mean.length; b++) {
      long sum = 0;
      for (int i = from + b * size; i < from + (b + 1) * size; i++) {
        sum += wave.codeAt(i);
      }
      mean[b] = wave.offset() + wave.lsb() * ((double) sum / size);
    }
    return new Blocks(size / channel.sampleRate_Hz(), mean);
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
