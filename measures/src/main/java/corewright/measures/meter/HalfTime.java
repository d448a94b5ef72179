package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.trend.Relaxation;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How long the output holds up once the input is gone: until it has fallen to half of where it
 * stood. Where the record ends before, its time constant tells (V·e^(−t/τ), half after τ·ln 2).
 */
final class HalfTime {
  /** The level is that of the first so many milliseconds. */
  private static final int LEVEL_MS = 10;

  private static final double FROM = 0.97;
  private static final double FALLEN = 0.85;

  private HalfTime() {}

  static Map<Quantity, Reading> read(Channel output) {
    return Map.of(Quantity.DECAY_HALF, reading(output));
  }

  private static Reading reading(Channel output) {
    double[] out = Overshoot.means(output, 0);
    if (out.length < 2 * LEVEL_MS) {
      return Reading.none("the record is too short");
    }
    double level = Arrays.stream(out, 0, LEVEL_MS).average().orElseThrow();
    int half = 0;
    while (half < out.length && out[half] > level / 2) {
      half++;
    }
    if (half < out.length) {
      double perMs = (out[half - 1] - out[Math.max(0, half - 101)]) / Math.min(100, half);
      double late = perMs < 0 ? output.resolution().ofOne() / -perMs : 0;
      return new Reading.Measured(
          new Measurement(half * 1e-3, Root.of(0.5, late) * 1e-3, Unit.SECOND), List.of());
    }
    if (out[out.length - 1] > FALLEN * level) {
      return Reading.none("the output had not fallen far enough when the step was over");
    }
    int[] used = IntStream.range(0, out.length).filter(i -> out[i] < FROM * level).toArray();
    Relaxation fit =
        Relaxation.towards(
            0,
            Arrays.stream(used).mapToDouble(i -> i * 1e-3).toArray(),
            Arrays.stream(used).mapToDouble(i -> out[i]).toArray());
    double half_s = fit.tau_s() * Math.log(2) + used[0] * 1e-3 - fit.tau_s() * -Math.log(FROM);
    return new Reading.Measured(
        new Measurement(half_s, fit.uTau_s() * Math.log(2), Unit.SECOND),
        List.of("The step was over before; its time constant tells."));
  }
}
