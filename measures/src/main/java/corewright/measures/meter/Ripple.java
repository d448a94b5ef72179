package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.measures.wave.CleanLine;
import corewright.measures.wave.Corners;
import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.PeakScatter;
import corewright.measures.wave.StrongestLine;
import java.util.List;
import java.util.Optional;

/** What remains about the mean of a hold. */
final class Ripple {
  /** Lines weaker than this are no ripple, V. */
  private static final double WEAKEST_LINE_V = 0.2e-3;

  /** From this sample rate on switching ripple is looked for, and below it slow oscillation. */
  private static final double FAST_Hz = 100e3;

  private static final String BY_FIT = "a clean line: by a sine fit of four parameters, IEEE 1057";

  private static final String BY_SPECTRUM = "from the spectrum: more than noise is beside the line";

  private Ripple() {}

  static void read(
      Channel output, Window window, Level level, MeterSettings settings, Readings into) {
    into.put(Quantity.RIPPLE_PEAK_TO_PEAK, peakToPeak(output, window, level));
    into.put(Quantity.RIPPLE_RMS, rms(output, window, level));
    into.put(Quantity.RIPPLE_RMS_DETRENDED, detrended(output, window, level));
    StatedBand.read(output, window, level, settings.bandwidth_Hz(), into);
    fundamental(output, window, settings.switching_Hz(), into);
    Comb.read(output, window, into);
  }

  /** The same without the straight line through the window. */
  private static Measurement detrended(Channel output, Window window, Level level) {
    int n = window.count();
    double sd = level.scatter().sd();
    CorrelatedScatter squares =
        CorrelatedScatter.ofSquares(
            output.wave(), window.from(), window.to(), level.trend(), sd * sd);
    double hidden =
        output.resolution().ofOne() * output.resolution().left(sd, level.trend().slope() * n, n);
    double scatter = sd > 0 ? squares.ofMean() / (2 * sd) : 0;
    // Of so few independent values the line follows two, and takes their squares with it. That is
    // not corrected, and so in U as it is (JCGM 100, F.2.4.5).
    double followed = sd / level.scatter().effectiveCount();
    return output.difference(
        sd * Math.sqrt((n - 2.0) / n), Root.of(scatter, hidden) + followed / 2);
  }

  private static Measurement peakToPeak(Channel output, Window window, Level level) {
    int from = window.from();
    PeakScatter peaks =
        PeakScatter.of(
            i -> output.wave().at(from + i) - level.trend().at(from + i), window.count());
    double rounding = output.resolution().ofOne();
    return output.difference(
        level.statistics().peakToPeak(),
        Root.of(
            rounding,
            rounding,
            peaks.highest(),
            peaks.lowest(),
            corner(output, from, peaks.highs(), -1),
            corner(output, from, peaks.lows(), 1)));
  }

  /** Corners of ripple are at all of the peaks; at many, noise looks like one. */
  private static double corner(Channel output, int from, List<Integer> peaks, int sign) {
    return peaks.stream()
        .mapToDouble(i -> Corners.ramp(output.wave(), from + i, sign))
        .min()
        .orElse(0);
  }

  /**
   * From the scatter of the squares: u(rms) = u(mean square)/(2 rms). Rounding adds its step²/12 to
   * the square as noise of the channel does, and hides what is smaller than a step.
   */
  private static Measurement rms(Channel output, Window window, Level level) {
    double rms = level.statistics().rms();
    double sd = level.scatter().sd();
    CorrelatedScatter squares =
        CorrelatedScatter.ofSquares(
            output.wave(), window.from(), window.to(), level.trend(), sd * sd);
    int n = window.count();
    // The mean square of trend plus noise has their product in it, twice.
    double trend = Math.abs(level.trend().slope()) * n / Math.sqrt(12);
    double cross = 2 * trend * level.scatter().ofMean();
    double scatter = rms > 0 ? Root.of(squares.ofMean(), cross) / (2 * rms) : 0;
    double hidden =
        output.resolution().ofOne() * output.resolution().left(sd, level.trend().slope() * n, n);
    double followed = sd / level.scatter().effectiveCount() / 2; // the mean follows one
    return output.difference(rms, Root.of(scatter, hidden) + followed / 2);
  }

  private static void fundamental(
      Channel output, Window window, Optional<Double> switching_Hz, Readings into) {
    double rate = output.sampleRate_Hz();
    boolean fast = rate >= FAST_Hz;
    Optional<StrongestLine> found =
        StrongestLine.find(
            output.wave(),
            rate,
            window.from(),
            window.to(),
            fast ? 1.2e3 : 0.8,
            fast ? 2e6 : rate / 5);
    if (found.filter(line -> line.amplitude() >= WEAKEST_LINE_V && line.standsOut()).isEmpty()) {
      into.none(
          "no line of 0.2 mV or more stands out of the noise",
          Quantity.RIPPLE_FUNDAMENTAL,
          Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE);
      return;
    }
    StrongestLine line = found.get();
    Optional<CleanLine> clean = CleanLine.of(output.wave(), rate, window.from(), window.to(), line);
    String way = clean.isPresent() ? BY_FIT : BY_SPECTRUM;
    into.put(
        Quantity.RIPPLE_FUNDAMENTAL,
        new Measurement(
            clean.map(CleanLine::frequency_Hz).orElse(line.frequency_Hz()),
            clean.map(CleanLine::frequencyU_Hz).orElse(line.frequencyU_Hz()),
            Unit.HERTZ),
        switching_Hz
            .filter(f -> f > rate / 2)
            .map(f -> List.of(folded(f), way))
            .orElse(List.of(way)));
    into.put(
        Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE,
        output.difference(
            clean.map(CleanLine::amplitude).orElse(line.amplitude()),
            clean.map(CleanLine::amplitudeU).orElse(line.amplitudeU())),
        List.of(way));
  }

  private static String folded(double switching_Hz) {
    return "the converter switches at "
        + Math.round(switching_Hz)
        + " Hz, above half the sample rate: ripple appears folded, at another frequency";
  }
}
