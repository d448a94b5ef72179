package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The under-voltage lock-out, from one slow ramp of the input down and up without load. It turned
 * off where the output began to fall: the line through two points of the fall, back to the level.
 * It turned on, at the latest, where the output began to rise by itself, faster than the input.
 *
 * @param feed the first supply feed
 */
record LockOut(Channel output, Channel feed) {
  private static final Quantity[] ALL = {
    Quantity.LOCK_OUT_OFF, Quantity.LOCK_OUT_ON, Quantity.LOCK_OUT_HYSTERESIS
  };

  /** The level is that of the first tenth of a second, before the ramp. */
  private static final int LEVEL_MS = 100;

  private static final double FALLEN = 0.02;
  private static final double FALLEN_MORE = 0.04;

  /** Risen so much of its level within so many milliseconds: no ramp of the input does that. */
  private static final double RISEN = 0.02;

  private static final int RISE_MS = 40;

  /** The input just before it turned on: so long before, over ten milliseconds. */
  private static final int BEFORE_MS = 7;

  /** A source is not told more often, ms. */
  private static final int TICK_MS = 20;

  Map<Quantity, Reading> read() {
    double[] out = Overshoot.means(output, 0);
    double[] in = Overshoot.means(feed, 0);
    if (out.length < 3 * LEVEL_MS) {
      return StepMeter.none(Reading.none("the ramp was too short"), ALL);
    }
    double level = 0;
    for (int i = 0; i < LEVEL_MS; i++) {
      level += out[i] / LEVEL_MS;
    }
    int first = below(out, (1 - FALLEN) * level);
    int second = below(out, (1 - FALLEN_MORE) * level);
    if (first == 0 || second == out.length) {
      return StepMeter.none(Reading.none("the output did not fall while the input went down"), ALL);
    }
    int turned = Math.max(LEVEL_MS, 2 * first - second);
    double off_V = mean(in, turned);
    double ramp_Vperms = Math.abs(mean(in, first) - mean(in, LEVEL_MS)) / (first - LEVEL_MS + 1);
    // A capacitor that runs down leaves its tangent by a fiftieth of this way; a tenth,
    // rectangular.
    double offU = Root.of(ramp_Vperms * (first - turned) / 10.0 / Math.sqrt(3), step(in, turned));
    Measurement off = feed.absolute(off_V, offU);
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    readings.put(Quantity.LOCK_OUT_OFF, new Reading.Measured(off, List.of()));
    int on = rising(out, in, second, level);
    if (on < 0) {
      Reading none = Reading.none("the output did not come back while the input went up");
      readings.put(Quantity.LOCK_OUT_ON, none);
      readings.put(Quantity.LOCK_OUT_HYSTERESIS, none);
      return readings;
    }
    // It draws at once and pulls the input down: what stood there before, and half a step more.
    double onU = Root.of(step(in, on), ramp_Vperms);
    double on_V = mean(in, on - BEFORE_MS) + Math.sqrt(3) * step(in, on);
    readings.put(Quantity.LOCK_OUT_ON, new Reading.Measured(feed.absolute(on_V, onU), List.of()));
    Measurement width = feed.difference(on_V - off_V, Root.of(offU, onU));
    readings.put(Quantity.LOCK_OUT_HYSTERESIS, new Reading.Measured(width, List.of()));
    return readings;
  }

  private static int below(double[] out, double level) {
    int at = 0;
    while (at < out.length && out[at] > level) {
      at++;
    }
    return at;
  }

  /** Where it began to rise, after the input was at its lowest; −1 if it never did. */
  private static int rising(double[] out, double[] in, int from, double level) {
    int lowest = from;
    for (int i = from; i < in.length; i++) {
      lowest = in[i] < in[lowest] ? i : lowest;
    }
    int risen = lowest + RISE_MS;
    while (risen < out.length && out[risen] - out[risen - RISE_MS] <= RISEN * level) {
      risen++;
    }
    if (risen >= out.length) {
      return -1;
    }
    int begins = risen - RISE_MS;
    for (int i = begins; i < risen; i++) {
      begins = out[i] <= out[begins] ? i : begins;
    }
    return begins;
  }

  /** The source goes in steps: rectangular over the one before. */
  private static double step(double[] in, int at) {
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = Math.max(0, at - 2 * TICK_MS); i < at - 1; i++) {
      lowest = Math.min(lowest, in[i]);
      highest = Math.max(highest, in[i]);
    }
    return highest > lowest ? (highest - lowest) / 2 / 2 / Math.sqrt(3) : 0;
  }

  private static double mean(double[] in, int at) {
    double sum = 0;
    int from = Math.max(0, at - 5);
    int to = Math.min(in.length, at + 5);
    for (int i = from; i < to; i++) {
      sum += in[i] / (to - from);
    }
    return sum;
  }
}
