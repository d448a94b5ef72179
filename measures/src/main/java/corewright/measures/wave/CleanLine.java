package corewright.measures.wave;

import corewright.measures.Waveform;
import corewright.measures.spectrum.SineFit;
import java.util.Optional;

/**
 * The strongest line of a stretch by the four-parameter sine fit of IEEE 1057, where the line is
 * clean. Least squares without a window are the best that can be had in white noise (the bound of
 * Cramér and Rao: 1.75 times nearer in frequency, 1.2 in amplitude, than two bins of a spectrum),
 * but let every other line leak in. So the fit counts only where
 *
 * <ul>
 *   <li>it stays within half a cycle over the stretch of where the spectrum saw the line;
 *   <li>the sine runs through {@link #FEWEST_CYCLES} or more, and is as far from half the rate:
 *       else it cannot be told from the trend, or from its own image;
 *   <li>what it leaves has, all of it, at most {@link #MORE_THAN_NOISE} times the rms of white
 *       noise as dense as beside the line: no harmonics, no second line, no bend;
 *   <li>it leaves nothing at the line's own place that stands out of that noise: the line neither
 *       wanders nor swells.
 * </ul>
 *
 * @param frequencyU_Hz standard uncertainty, from what the fit leaves
 * @param amplitude peak value of the sine
 * @param amplitudeU standard uncertainty, likewise
 * @see "IEEE 1057, 4.1.4 (clause from memory)"
 */
public record CleanLine(
    double frequency_Hz, double frequencyU_Hz, double amplitude, double amplitudeU) {
  private static final double FEWEST_CYCLES = 10;

  /** The noise beside is known from some 18 bins, to a quarter: twice that. */
  private static final double MORE_THAN_NOISE = 1.5;

  /**
   * In scales of a Rayleigh distribution: noise gives more in one bin of 25,000, or of 200 where
   * that scale was found a third too small.
   */
  private static final double STANDS_OUT = 4.5;

  private static final int PLACE = 2; // bins to either side that a Hann line reaches

  /**
   * @param line as the spectrum of the same stretch shows it
   * @return empty where the line is not clean
   */
  public static Optional<CleanLine> of(
      Waveform wave, double sampleRate_Hz, int from, int to, StrongestLine line) {
    double cycles = line.frequency_Hz() * line.duration_s();
    double toHalf = line.count() / 2.0 - cycles;
    if (!(Math.min(cycles, toHalf) >= FEWEST_CYCLES)) {
      return Optional.empty();
    }
    LinearTrend trend = LinearTrend.of(wave, from, to);
    double[] x = new double[to - from];
    for (int i = 0; i < x.length; i++) {
      x[i] = wave.at(from + i) - trend.at(from + i);
    }
    return SineFit.seek(x, sampleRate_Hz, line.frequency_Hz())
        .flatMap(
            first -> {
              // The sine has bent the trend a little: what is left now tells how much.
              straighten(x, first.leaves(x, sampleRate_Hz));
              return SineFit.seek(x, sampleRate_Hz, first.frequency_Hz());
            })
        .flatMap(fit -> judged(fit, fit.leaves(x, sampleRate_Hz), sampleRate_Hz, wave.lsb()));
  }

  private static void straighten(double[] x, double[] left) {
    double centre = (x.length - 1) / 2.0;
    double cross = 0;
    for (int i = 0; i < x.length; i++) {
      cross += (i - centre) * left[i];
    }
    double slope = cross / LinearTrend.spread(x.length);
    for (int i = 0; i < x.length; i++) {
      x[i] -= slope * (i - centre);
    }
  }

  private static Optional<CleanLine> judged(
      SineFit fit, double[] left, double sampleRate_Hz, double lsb) {
    int n = left.length;
    for (int i = 0; i < n; i++) {
      left[i] *= StrongestLine.hann(i, n);
    }
    Bins bins = new Bins(left);
    int place = (int) Math.round(fit.frequency_Hz() * n / sampleRate_Hz);
    double scale = bins.floorBeside(place);
    double beside = StrongestLine.whiteRms(scale, n);
    double rest = fit.rmsError() * Math.sqrt(n / (n - 4.0));
    if (rest > MORE_THAN_NOISE * beside) {
      return Optional.empty();
    }
    for (int k = place - PLACE; k <= place + PLACE; k++) {
      if (bins.magnitude(k) > STANDS_OUT * scale) {
        return Optional.empty();
      }
    }
    // Rounding to whole codes leaves its share even where the codes happen to fit exactly.
    double noise = Math.max(Math.max(rest, beside), lsb / Math.sqrt(12));
    double frequencyU_Hz =
        Math.sqrt(6.0 / n) * noise / fit.amplitude() * sampleRate_Hz / (Math.PI * n);
    return Optional.of(
        new CleanLine(
            fit.frequency_Hz(), frequencyU_Hz, fit.amplitude(), noise * Math.sqrt(2.0 / n)));
  }
}
