package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.spectrum.Spectrum;
import corewright.measures.spectrum.Window;
import corewright.measures.wave.Samples;
import java.util.ArrayList;
import java.util.List;

/**
 * What the output of one hold's window is made of by frequency.
 *
 * @param hold its index
 * @param lines flat top: right for the peak amplitude of a sine, V
 * @param noise Hann: right for the density of noise, rms V/√Hz
 */
public record HoldSpectrum(int hold, Spectrum lines, Spectrum noise) {
  private static final int LONGEST = 1 << 16;
  private static final int SHORTEST = 64;

  /** Segments are a quarter of the window or less, so that seven or more are averaged. */
  private static final int PARTS = 4;

  /**
   * One for each hold whose window was read and has 256 samples or more.
   *
   * @param run what the meter read of the capture
   */
  public static List<HoldSpectrum> of(Capture capture, MeasuredRun run) {
    List<HoldSpectrum> spectra = new ArrayList<>();
    double rate = capture.sampleRate_Hz();
    for (MeasuredHold hold : run.holds()) {
      int from = Samples.at(hold.windowStart_s(), rate);
      int to = Math.min(capture.size(), Samples.at(hold.windowEnd_s(), rate));
      boolean whole = capture.gaps().stream().noneMatch(gap -> gap.touches(from, to));
      if (whole && to - from >= PARTS * SHORTEST) {
        double[] x = new double[to - from];
        for (int i = 0; i < x.length; i++) {
          x[i] = capture.output().at(from + i);
        }
        int segment = Math.min(LONGEST, Integer.highestOneBit(x.length / PARTS));
        spectra.add(
            new HoldSpectrum(
                hold.index(),
                Spectrum.of(x, rate, Window.HFT90D, segment),
                Spectrum.of(x, rate, Window.HANN, segment)));
      }
    }
    return spectra;
  }

  /**
   * Standard uncertainty of a bin's density over the density. The power of one segment scatters by
   * all of itself; half-overlapping Hann segments are correlated by ρ = 1/6.
   *
   * @see "Welch, IEEE Trans. Audio 15 (1967) 70 (from memory)"
   */
  public double densityU_rel() {
    int k = noise.segments();
    return Math.sqrt((1 + 2 * (k - 1.0) / k / 36) / k) / 2;
  }
}
