package corewright.measures.meter;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The input goes down slowly under load. Two readings: the input at which the output left 1 % of
 * its level at rest, which is there only where it did, and not before; and the lowest output, which
 * is always there. Where the input is below the floor nothing is said about a unit, and nothing is
 * read.
 *
 * @param feeds every supply feed; the lowest of them counts
 * @param floor_V below this an input is not even tolerated, V
 */
record Falling(Channel output, List<Channel> feeds, double floor_V) {
  static final Quantity[] ALL = {Quantity.HOLDS_TO, Quantity.FALLING_LOWEST};

  /** The input stands still for so long before the ramp, and longer. */
  private static final int LEVEL_MS = 100;

  private static final double LEFT = 0.01;

  /** So far about the threshold noise and ripple may move the crossing, as a part of the level. */
  private static final double ABOUT = 0.001;

  /**
   * What was read.
   *
   * @param level at rest before, V: a converter that sags under the load alone does not hold
   */
  Map<Quantity, Reading> read(double level) {
    double[] out = Overshoot.means(output, 0);
    double[] in = lowest();
    int end = below(in, floor_V, 0);
    if (end <= LEVEL_MS) {
      return StepMeter.none(
          Reading.none(
              out.length <= LEVEL_MS
                  ? "the step was over before the input fell"
                  : "the input was below " + Figures.number(floor_V, 1) + " V from the start"),
          ALL);
    }
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    readings.put(Quantity.HOLDS_TO, holdsTo(out, in, level, end));
    double lowest = out[0];
    for (int i = 1; i < end; i++) {
      lowest = Math.min(lowest, out[i]);
    }
    int levelSamples = LEVEL_MS * output.wave().size() / out.length;
    double u = Overshoot.scatter(output, Level.of(output, 0, levelSamples).scatter().sd(), end);
    readings.put(
        Quantity.FALLING_LOWEST, new Reading.Measured(output.absolute(lowest, u), List.of()));
    return readings;
  }

  private Reading holdsTo(double[] out, double[] in, double level, int end) {
    int left = below(out, (1 - LEFT) * level, 0);
    if (left < LEVEL_MS) {
      return Reading.none(
          "the output lay at "
              + Figures.number(out[left], 1)
              + " V under the load before the input fell");
    }
    if (left >= end) {
      Measurement reached = feeds.get(0).absolute(mean(in, end - 1), 0);
      return Reading.none(
          "the output held all the way, with the input down to " + Figures.withU(reached));
    }
    int before = below(out, (1 - LEFT + ABOUT) * level, LEVEL_MS);
    int after = Math.min(end - 1, below(out, (1 - LEFT - ABOUT) * level, left));
    double crossing = Math.abs(mean(in, before) - mean(in, after)) / 2 / Math.sqrt(3);
    return new Reading.Measured(
        feeds.get(0).absolute(mean(in, left), Root.of(crossing, ofOne(in, left))), List.of());
  }

  /** The lowest feed in each millisecond. */
  private double[] lowest() {
    double[] lowest = Overshoot.means(feeds.get(0), 0);
    for (Channel feed : feeds.subList(1, feeds.size())) {
      double[] other = Overshoot.means(feed, 0);
      for (int i = 0; i < lowest.length; i++) {
        lowest[i] = Math.min(lowest[i], other[i]);
      }
    }
    return lowest;
  }

  private static int below(double[] means, double level, int from) {
    int at = from;
    while (at < means.length && means[at] >= level) {
      at++;
    }
    return at;
  }

  /** Over ten milliseconds about a moment: a source goes in steps. */
  private static double mean(double[] in, int at) {
    int from = Math.max(0, at - 5);
    int to = Math.min(in.length, at + 5);
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += in[i] / (to - from);
    }
    return sum;
  }

  /** How far the input is about there, rectangular. */
  private static double ofOne(double[] in, int at) {
    double least = in[at];
    double most = in[at];
    for (int i = Math.max(0, at - 10); i < Math.min(in.length, at + 10); i++) {
      least = Math.min(least, in[i]);
      most = Math.max(most, in[i]);
    }
    return (most - least) / 2 / Math.sqrt(3);
  }
}
