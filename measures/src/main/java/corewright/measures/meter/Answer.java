package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.LinearTrend;
import corewright.measures.wave.Samples;
import corewright.measures.wave.Smoothing;
import corewright.measures.wave.Transient;
import java.util.List;

/** How the output answers the load edge that begins a hold: undershoot, overshoot, recovery. */
final class Answer {
  private static final double BAND = 0.01;

  /** Coverage factor that turns the half-width of a 95 % interval into what stands for u. */
  private static final double K = 2;

  private Answer() {}

  /**
   * Puts the three readings.
   *
   * @param before the window of the hold before
   * @param nominal what the band is 1 % of
   * @return the state of the recovery
   */
  static String read(
      Channel output,
      Window window,
      Window before,
      double settle_s,
      Level level,
      Nominal nominal,
      Readings into) {
    double rate = output.sampleRate_Hz();
    double start_s = window.hold().start_s();
    Transient.Settled settled = settled(output, window, before, level, BAND * nominal.value_V());
    Transient answer =
        Transient.of(
            output.wave(),
            rate,
            start_s,
            Math.min(window.holdTo(), Samples.at(start_s + settle_s, rate)),
            window.guardTo(),
            settled);
    into.put(
        Quantity.UNDERSHOOT,
        output.difference(level.mean() - answer.lowest(), u(settled, answer.lowestU())));
    into.put(
        Quantity.OVERSHOOT,
        output.difference(answer.highest() - level.mean(), u(settled, answer.highestU())));
    if (answer.recovery() == Transient.Recovery.NOT_RECOVERED) {
      into.none(
          "the output is still more than 1 % of nominal from its mean when the window ends",
          Quantity.RECOVERY);
    } else {
      into.put(
          Quantity.RECOVERY,
          new Measurement(answer.recovery_s(), answer.recoveryU_s() / K, Unit.SECOND),
          nominal.flag().map(List::of).orElse(List.of()));
    }
    return answer.recovery().state();
  }

  private static double u(Transient.Settled settled, double halfWidth) {
    return Root.of(settled.u(), halfWidth / K);
  }

  /** The new level, and the noise that the transient is seen in. */
  private static Transient.Settled settled(
      Channel output, Window window, Window before, Level level, double band) {
    CorrelatedScatter scatter = smoothed(output, window);
    // Ripple of the load before still runs when the edge begins.
    if (before.unread().isEmpty()) {
      CorrelatedScatter earlier = smoothed(output, before);
      scatter = earlier.sd() > scatter.sd() ? earlier : scatter;
    }
    double u = Root.of(level.uMean(), output.resolution().ofOne());
    double correlated = scatter.count() / scatter.effectiveCount();
    return new Transient.Settled(level.mean(), u, scatter.sd(), correlated, band);
  }

  /** Scatter of a settled window about its trend, seen through the same average. */
  private static CorrelatedScatter smoothed(Channel output, Window window) {
    double[] x = Smoothing.of(output.wave(), output.sampleRate_Hz(), window.from(), window.to());
    LinearTrend trend = LinearTrend.of(output.wave(), window.from(), window.to());
    return CorrelatedScatter.of(i -> x[i] - trend.at(window.from() + i), x.length, 2);
  }
}
