package corewright.bench.run;

import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import java.util.Map;

/**
 * Both terminals as they stand at the end of the first power, behind its small current limit. Where
 * a unit takes the whole current, they say where it goes: at a short nothing stands.
 */
final class BehindLimit {
  private BehindLimit() {}

  /** Means of one frame, in which nothing moves any more. */
  static Map<Quantity, Reading> of(FrameView view, String feed) {
    return Map.of(
        Quantity.FIRST_POWER_INPUT, mean(view, feed),
        Quantity.FIRST_POWER_OUTPUT, mean(view, "output"));
  }

  private static Reading mean(FrameView view, String channel) {
    int c = view.channel(channel);
    double mean = Means.of(view, channel);
    if (c < 0 || !Double.isFinite(mean)) {
      return Reading.none("it is beyond the digitizer's range.");
    }
    double squares = 0;
    for (int i = 0; i < view.samples(); i++) {
      squares += Math.pow(view.value(c, i) - mean, 2);
    }
    double step = view.channels().get(c).lsb() / Math.sqrt(12);
    double scatter = Math.sqrt(squares) / view.samples();
    return Reading.of(mean, Math.hypot(scatter, step), Unit.VOLT);
  }
}
