package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.measures.wave.Samples;
import corewright.measures.wave.Smoothing;
import corewright.measures.wave.Transient;
import java.util.List;

/** How the output answers the load edge that begins a hold: undershoot, overshoot, recovery. */
final class Answer {
  private static final double BAND = 0.01;

  private Answer() {}

  /**
   * Puts the three readings.
   *
   * @param nominal what the band is 1 % of
   * @return the state of the recovery
   */
  static String read(
      Channel output, Window window, double settle_s, Level level, Nominal nominal, Readings into) {
    double rate = output.sampleRate_Hz();
    double start_s = window.hold().start_s();
    double u = Root.of(level.uMean(), noise(output, window), output.resolution().ofOne());
    Transient answer =
        Transient.of(
            output.wave(),
            rate,
            start_s,
            Math.min(window.holdTo(), Samples.at(start_s + settle_s, rate)),
            window.guardTo(),
            level.mean(),
            BAND * nominal.value_V(),
            u);
    into.put(Quantity.UNDERSHOOT, output.difference(level.mean() - answer.lowest(), u));
    into.put(Quantity.OVERSHOOT, output.difference(answer.highest() - level.mean(), u));
    if (answer.recovery() == Transient.Recovery.NOT_RECOVERED) {
      into.none(
          "the output is still more than 1 % of nominal from its mean when the window ends",
          Quantity.RECOVERY);
    } else {
      double grid = 1 / rate / Math.sqrt(3);
      into.put(
          Quantity.RECOVERY,
          new Measurement(answer.recovery_s(), Root.of(grid, answer.recoveryU_s()), Unit.SECOND),
          nominal.flag().map(List::of).orElse(List.of()));
    }
    return answer.recovery().state();
  }

  /** Standard deviation of what the transient is seen through, in the settled window. */
  private static double noise(Channel output, Window window) {
    double[] x = Smoothing.of(output.wave(), output.sampleRate_Hz(), window.from(), window.to());
    double mean = 0;
    for (double value : x) {
      mean += value / x.length;
    }
    double squares = 0;
    for (double value : x) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares / x.length);
  }
}
