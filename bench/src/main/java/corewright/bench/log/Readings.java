package corewright.bench.log;

import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Optional;

/**
 * Readings of a log: the uncertainty is of scatter and resolution only, since nobody knows the
 * tool's calibration.
 */
final class Readings {
  /** Where a channel never moves its step is not known; a tenth is the commonest, V. */
  private static final double USUAL_STEP_V = 0.1;

  /** A median scatters by this much more than a mean: √(π/2). */
  private static final double MEDIAN_FACTOR = 1.2533;

  private Readings() {}

  static double step_V(double quantum_V) {
    return Double.isNaN(quantum_V) ? USUAL_STEP_V : quantum_V;
  }

  /** The median of the samples; empty without any. */
  static Optional<Measurement> median(Series s, double quantum_V) {
    if (s.isEmpty()) {
      return Optional.empty();
    }
    double u =
        Math.hypot(
            MEDIAN_FACTOR * Stats.scatter(s) / Math.sqrt(s.size()),
            step_V(quantum_V) / Math.sqrt(12));
    return Optional.of(volts(Stats.median(s.sorted()), u));
  }

  /** One sample or one order statistic: half a step either way, and the scatter of one. */
  static Measurement single(double value_V, double scatter_V, double quantum_V) {
    return volts(value_V, Math.hypot(scatter_V, step_V(quantum_V) / Math.sqrt(12)));
  }

  static Measurement volts(double value_V, double u_V) {
    return new Measurement(value_V, u_V, Unit.VOLT);
  }

  /** A drift in V/min, the interval taken as two standard uncertainties either way. */
  static Optional<Measurement> drift(Drift drift) {
    double u = 60 * (drift.high_V_s() - drift.low_V_s()) / 4;
    return Double.isFinite(u)
        ? Optional.of(new Measurement(60 * drift.slope_V_s(), u, Unit.VOLT_PER_MINUTE))
        : Optional.empty();
  }
}
