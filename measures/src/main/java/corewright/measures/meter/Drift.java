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

  /** A slope with Hann's weights has 2.34 times the variance of the plain one, in white noise. */
  private static final double HANN_COSTS = 1.34;

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
    // Where the scatter is ripple, what of it leaks into the slope is no noise.
    double leak = level.scatter().effectiveCount() > n ? leak(output, window, level, scatter) : 0;
    // A level that never leaves one step may rise or fall by up to a step: triangular, ±step.
    double left = output.resolution().left(level.scatter().sd(), level.trend().slope() * n, n);
    double hidden = left * output.resolution().step() / n / Math.sqrt(6);
    double u =
        Root.of(
            scatter * perMinute,
            leak * perMinute,
            hidden * perMinute,
            output.doubt().gain_rel() * drift);
    into.put(Quantity.DRIFT, new Measurement(drift, u, Unit.VOLT_PER_MINUTE));
  }

  /**
   * How far the slope lies from one with Hann's weights, which is blind to lines, beyond what noise
   * alone moves the two apart; per sample.
   */
  private static double leak(Channel output, Window window, Level level, double scatter) {
    int n = window.count();
    double centre = (n - 1) / 2.0;
    double cross = 0;
    double spread = 0;
    for (int i = 0; i < n; i++) {
      double weight = (1 + Math.cos(2 * Math.PI * (i - centre) / n)) * (i - centre);
      cross += weight * (output.wave().at(window.from() + i) - level.trend().at(window.from() + i));
      spread += weight * (i - centre);
    }
    double apart = cross / spread;
    return Math.sqrt(Math.max(0, apart * apart - HANN_COSTS * scatter * scatter));
  }
}
