package corewright.measures.meter;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.LinearTrend;
import corewright.measures.wave.Samples;
import corewright.measures.wave.Smoothing;
import corewright.measures.wave.Transient;
import java.util.List;
import java.util.Optional;

/** How the output answers the load edge that begins a hold: undershoot, overshoot, recovery. */
final class Answer {
  static final Quantity[] ALL = {
    Quantity.UNDERSHOOT,
    Quantity.OVERSHOOT,
    Quantity.RECOVERY,
    Quantity.RECOVERY_QUARTER,
    Quantity.RECOVERY_BAND,
    Quantity.TIME_OF_MINIMUM
  };

  private static final double BAND = 0.01;
  private static final double QUARTER = 0.0025;

  /** Noise leaves a band by itself where it is wider than this part of it. */
  private static final double NOISE_PART = 0.2;

  /** A dip is one from this many standard deviations of the noise on. */
  private static final double DIPS = 5;

  /** Coverage factor that turns the half-width of a 95 % interval into what stands for u. */
  private static final double K = 2;

  private Answer() {}

  /**
   * The bands that a recovery is timed into.
   *
   * @param own_V one of the reader's own
   */
  record Bands(Nominal nominal, Optional<Double> own_V) {}

  /**
   * Puts the three readings.
   *
   * @param before the window of the hold before
   * @return the state of the recovery
   */
  static String read(
      Channel output,
      Window window,
      Window before,
      double settle_s,
      Level level,
      Bands bands,
      Readings into) {
    double rate = output.sampleRate_Hz();
    double start_s = window.hold().start_s();
    Nominal nominal = bands.nominal();
    Transient.Settled settled = settled(output, window, before, level, BAND * nominal.value_V());
    int settledAt = Math.min(window.holdTo(), Samples.at(start_s + settle_s, rate));
    Transient answer =
        Transient.of(output.wave(), rate, start_s, settledAt, window.guardTo(), settled);
    into.put(
        Quantity.UNDERSHOOT,
        output.difference(level.mean() - answer.lowest(), u(settled, answer.lowestU())));
    into.put(
        Quantity.OVERSHOOT,
        output.difference(answer.highest() - level.mean(), u(settled, answer.highestU())));
    into.put(Quantity.RECOVERY, recovery(answer, "more than 1 % of nominal", nominal.flag()));
    lowest(answer, settled, rate, into);
    double quarter_V = QUARTER * nominal.value_V();
    into.put(
        Quantity.RECOVERY_QUARTER,
        within(output, window, settledAt, settled, quarter_V, nominal.flag()));
    into.put(
        Quantity.RECOVERY_BAND,
        bands
            .own_V()
            .map(band -> within(output, window, settledAt, settled, band, Optional.empty()))
            .orElse(Reading.none("no band was stated")));
    return answer.recovery().state();
  }

  private static Reading recovery(Transient answer, String far, Optional<String> flag) {
    if (answer.recovery() == Transient.Recovery.NOT_RECOVERED) {
      return Reading.none("the output is still " + far + " from its mean when the window ends");
    }
    return new Reading.Measured(
        new Measurement(answer.recovery_s(), answer.recoveryU_s() / K, Unit.SECOND),
        flag.map(List::of).orElse(List.of()));
  }

  /** The same into another band; not where the noise alone would leave it. */
  private static Reading within(
      Channel output,
      Window window,
      int settledAt,
      Transient.Settled settled,
      double band_V,
      Optional<String> flag) {
    String width = Figures.number(band_V, 3) + " V";
    if (settled.noise() > NOISE_PART * band_V) {
      return Reading.none("not measurable: noise and ripple leave a band of ± " + width);
    }
    Transient.Settled narrower =
        new Transient.Settled(
            settled.level(), settled.u(), settled.noise(), settled.correlated(), band_V);
    Transient answer =
        Transient.of(
            output.wave(),
            output.sampleRate_Hz(),
            window.hold().start_s(),
            settledAt,
            window.guardTo(),
            narrower);
    return recovery(answer, "more than " + width, flag);
  }

  private static void lowest(
      Transient answer, Transient.Settled settled, double sampleRate_Hz, Readings into) {
    if (settled.level() - answer.lowest() < DIPS * Root.of(settled.noise(), settled.u())) {
      into.none("the output does not dip out of its noise", Quantity.TIME_OF_MINIMUM);
      return;
    }
    double grid = 1 / sampleRate_Hz / Math.sqrt(6); // its own, and that of the edge
    into.put(
        Quantity.TIME_OF_MINIMUM,
        new Measurement(answer.lowestAt_s(), Root.of(answer.lowestAtU_s(), grid), Unit.SECOND));
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
    // Noise of a step and more holds what rounding does to a sample; below it, it comes on top.
    double rounding = output.resolution().ofMean(scatter.sd(), 0, scatter.count());
    double u = Root.of(level.uMean(), rounding);
    double correlated = Math.max(1, scatter.count() / scatter.effectiveCount());
    return new Transient.Settled(level.mean(), u, scatter.sd(), correlated, band);
  }

  /** Scatter of a settled window about its trend, seen through the same average. */
  private static CorrelatedScatter smoothed(Channel output, Window window) {
    double[] x = Smoothing.of(output.wave(), output.sampleRate_Hz(), window.from(), window.to());
    LinearTrend trend = LinearTrend.of(output.wave(), window.from(), window.to());
    return CorrelatedScatter.of(i -> x[i] - trend.at(window.from() + i), x.length, 2);
  }
}
