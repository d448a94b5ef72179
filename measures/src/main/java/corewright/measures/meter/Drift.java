package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.measures.wave.LinearTrend;

/** The output moving during a hold, V/min. */
final class Drift {
  /** A shorter hold shows settling and no drift, s. */
  private static final double SHORTEST_HOLD_S = 1;

  private static final double S_PER_MIN = 60;

  private Drift() {}

  static void read(Channel output, Window window, Level level, Readings into) {
    if (window.hold().length_s() < SHORTEST_HOLD_S) {
      into.none("the hold is shorter than 1 s", Quantity.DRIFT);
      return;
    }
    int n = window.count();
    double perMinute = output.sampleRate_Hz() * S_PER_MIN;
    double drift = level.trend().slope() * perMinute;
    double scatter =
        level.scatter().sd()
            * Math.sqrt(n / level.scatter().effectiveCount() / LinearTrend.spread(n));
    // A level that never leaves one step may rise or fall by up to a step: triangular, ±step.
    double left = output.resolution().left(level.scatter().sd(), level.trend().slope() * n, n);
    double hidden = left * output.resolution().step() / n / Math.sqrt(6);
    double u = Root.of(scatter * perMinute, hidden * perMinute, output.doubt().gain_rel() * drift);
    into.put(Quantity.DRIFT, new Measurement(drift, u, Unit.VOLT_PER_MINUTE));
  }
}
