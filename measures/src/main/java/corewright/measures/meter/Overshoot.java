package corewright.measures.meter;

import corewright.measures.Reading;
import java.util.List;

/**
 * Extremes of a slow answer, taken from means of 1 ms: a converter's own ripple and noise are no
 * part of them, and its loop answers no faster.
 */
final class Overshoot {
  private static final double MEAN_S = 1e-3;

  private Overshoot() {}

  /** How far the output rose above its settled level; 0 or a little less where it did not. */
  static Reading of(Channel output, Level settled) {
    double[] means = means(output, 0);
    double highest = Double.NEGATIVE_INFINITY;
    for (double mean : means) {
      highest = Math.max(highest, mean);
    }
    double u = Root.of(scatter(output, settled.scatter().sd(), means.length), settled.uMean());
    return new Reading.Measured(output.difference(highest - settled.mean(), u), List.of());
  }

  /** The lowest mean of 1 ms from a sample on. */
  static Reading lowest(Channel output, int from) {
    double[] means = means(output, from);
    double lowest = Double.POSITIVE_INFINITY;
    for (double mean : means) {
      lowest = Math.min(lowest, mean);
    }
    if (means.length == 0) {
      return Reading.none("the step was over before the output had settled");
    }
    Level level = Level.of(output, from, output.wave().size());
    double u = scatter(output, level.scatter().sd(), means.length);
    return new Reading.Measured(output.absolute(lowest, u), List.of());
  }

  static double[] means(Channel channel, int from) {
    int block = (int) Math.max(1, Math.round(MEAN_S * channel.sampleRate_Hz()));
    double[] means = new double[Math.max(0, (channel.wave().size() - from) / block)];
    for (int b = 0; b < means.length; b++) {
      for (int i = 0; i < block; i++) {
        means[b] += channel.wave().at(from + b * block + i) / block;
      }
    }
    return means;
  }

  /** What noise lifts the highest of so many means by, at most, with half of it as u. */
  static double scatter(Channel channel, double sd, int count) {
    int block = (int) Math.max(1, Math.round(MEAN_S * channel.sampleRate_Hz()));
    double ofMean = sd / Math.sqrt(block);
    double lift = Math.sqrt(2 * Math.log(Math.max(2, count)));
    return Root.of(lift * ofMean / 2, channel.resolution().ofOne());
  }
}
