package corewright.measures.wave;

import corewright.measures.Waveform;

/**
 * Least-squares straight line through a stretch.
 *
 * @param from first sample of the stretch
 * @param centre its middle, as a sample index, generally with a half
 * @param level value of the line at the middle, which is the mean
 * @param slope rise per sample
 */
public record LinearTrend(int from, double centre, double level, double slope) {

  /** Line through samples {@code [from, to)}; at least two. */
  public static LinearTrend of(Waveform wave, int from, int to) {
    Stretch.require(wave, from, to, 2);
    int n = to - from;
    double centre = (n - 1) / 2.0;
    int reference = wave.codeAt(from);
    double sum = 0;
    double cross = 0;
    for (int i = 0; i < n; i++) {
      double d = (double) wave.codeAt(from + i) - reference;
      sum += d;
      cross += (i - centre) * d;
    }
    double mean = wave.offset() + wave.lsb() * (reference + sum / n);
    return new LinearTrend(from, from + centre, mean, wave.lsb() * cross / spread(n));
  }

  /** Σ(i − ī)² of n equally spaced points one apart. */
  public static double spread(int n) {
    return n * ((double) n * n - 1) / 12;
  }

  /** The line at a sample index. */
  public double at(double index) {
    return level + slope * (index - centre);
  }
}
