package corewright.measures.hold;

import corewright.measures.Capture;
import corewright.measures.Waveform;
import java.util.Arrays;

/**
 * The load current in block means, quiet enough for its steps to stand out, without the blocks in
 * which an electronic load cannot draw its current because there is too little voltage: there the
 * current follows the output and says nothing about what was asked for.
 */
final class LoadBlocks {
  private static final int BLOCKS_IN_A_HOLD = 256;
  private static final int FEWEST_BLOCKS = 4000;
  private static final int LONGEST_NOISE_RUN = 32;
  private static final int SHORTEST_NOISE_RUN = 4;
  private static final int NOISE_RUNS = 64;

  /** A step is at least this many standard deviations of the block means' noise. */
  private static final double NOISE_MARGIN = 8;

  /** ... this part of the whole range of the current, */
  private static final double RANGE_PART = 0.015;

  /** ... this many codes, */
  private static final double CODES_MARGIN = 4;

  /** ... and this much, A: what no bench load is stepped by. */
  private static final double SMALLEST_STEP_A = 0.01;

  /** Electronic loads need one to a few volts to draw their current (common practice). */
  private static final double LOWEST_DRAWING_V = 1;

  private static final double LOWEST_DRAWING_PART = 0.05;

  private final int size;
  private final int[] index;
  private final double[] current_A;
  private final double[] output_V;
  private final double drawing_V;
  private final double noise_A;
  private final double threshold_A;

  private LoadBlocks(
      int size,
      int[] index,
      double[] current_A,
      double[] output_V,
      double drawing_V,
      double lsb_A) {
    this.size = size;
    this.drawing_V = drawing_V;
    this.index = index;
    this.current_A = current_A;
    this.output_V = output_V;
    noise_A = noise(current_A);
    threshold_A =
        Math.max(
            Math.max(SMALLEST_STEP_A, CODES_MARGIN * lsb_A),
            Math.max(NOISE_MARGIN * noise_A, RANGE_PART * range(current_A)));
  }

  /**
   * @param shortest samples of the shortest hold
   */
  static LoadBlocks of(Capture capture, Waveform load, int shortest) {
    int size = Math.max(1, shortest / BLOCKS_IN_A_HOLD);
    LoadBlocks blocks = inBlocks(capture, load, size);
    while (blocks.noisy() && load.size() / (size * 2) >= FEWEST_BLOCKS) {
      size *= 2;
      blocks = inBlocks(capture, load, size);
    }
    return blocks;
  }

  private static LoadBlocks inBlocks(Capture capture, Waveform load, int size) {
    double[] current = means(load, size);
    double[] output = means(capture.output(), size);
    double enough =
        Math.max(LOWEST_DRAWING_V, LOWEST_DRAWING_PART * Arrays.stream(output).max().orElse(0));
    boolean[] usable = new boolean[current.length];
    int count = 0;
    for (int i = 0; i < usable.length; i++) {
      // The neighbours too: a block may hold the end of a collapse.
      usable[i] =
          output[i] >= enough
              && output[Math.max(0, i - 1)] >= enough
              && output[Math.min(output.length - 1, i + 1)] >= enough;
      count += usable[i] ? 1 : 0;
    }
    int[] index = new int[count];
    int at = 0;
    for (int i = 0; i < usable.length; i++) {
      if (usable[i]) {
        current[at] = current[i];
        output[at] = output[i];
        index[at++] = i;
      }
    }
    return new LoadBlocks(
        size,
        index,
        Arrays.copyOf(current, count),
        Arrays.copyOf(output, count),
        enough,
        load.lsb());
  }

  private static double[] means(Waveform wave, int size) {
    double[] means = new double[wave.size() / size];
    for (int b = 0; b < means.length; b++) {
      long sum = 0;
      for (int i = b * size; i < (b + 1) * size; i++) {
        sum += wave.codeAt(i);
      }
      means[b] = wave.offset() + wave.lsb() * ((double) sum / size);
    }
    return means;
  }

  private boolean noisy() {
    return NOISE_MARGIN * noise_A > RANGE_PART * range(current_A)
        && NOISE_MARGIN * noise_A > SMALLEST_STEP_A;
  }

  /** Standard deviation inside short runs, in the median of all runs: steps do not raise it. */
  private static double noise(double[] x) {
    int run = Math.max(SHORTEST_NOISE_RUN, Math.min(LONGEST_NOISE_RUN, x.length / NOISE_RUNS));
    double[] spreads = new double[x.length / run];
    for (int r = 0; r < spreads.length; r++) {
      double mean = 0;
      double squares = 0;
      for (int i = r * run; i < (r + 1) * run; i++) {
        mean += x[i] / run;
      }
      for (int i = r * run; i < (r + 1) * run; i++) {
        squares += (x[i] - mean) * (x[i] - mean);
      }
      spreads[r] = Math.sqrt(squares / (run - 1));
    }
    Arrays.sort(spreads);
    return spreads.length == 0 ? 0 : spreads[spreads.length / 2];
  }

  /** Highest less lowest median of three neighbours: single wild samples do not widen it. */
  private static double range(double[] x) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 1; i + 1 < x.length; i++) {
      double median =
          Math.max(Math.min(x[i - 1], x[i]), Math.min(Math.max(x[i - 1], x[i]), x[i + 1]));
      low = Math.min(low, median);
      high = Math.max(high, median);
    }
    return high > low ? high - low : 0;
  }

  /** Usable blocks; they are numbered without those that are left out. */
  int count() {
    return current_A.length;
  }

  /** From this output on a load can draw its current. */
  double drawing_V() {
    return drawing_V;
  }

  /** Samples in a block. */
  int size() {
    return size;
  }

  /** Mean load current of a block. */
  double current_A(int block) {
    return current_A[block];
  }

  double meanCurrent_A(int from, int to) {
    return mean(current_A, from, to);
  }

  double meanOutput_V(int from, int to) {
    return mean(output_V, from, to);
  }

  /** Standard deviation of a block about its level. */
  double noise_A() {
    return noise_A;
  }

  /** Smallest change of level that is a step. */
  double threshold_A() {
    return threshold_A;
  }

  /** First sample of a block. */
  int sample(int block) {
    return index[block] * size;
  }

  /** Whether blocks were left out between these two. */
  boolean hidden(int left, int right) {
    return index[right] - index[left] > right - left;
  }

  private static double mean(double[] x, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += x[i];
    }
    return sum / (to - from);
  }
}
