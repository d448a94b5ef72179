package corewright.measures.wave;

/** The last return of a transient into the band around its settled level. */
final class BandReturn {
  /** So many deviations of the noise to either side of the band. */
  private static final double APART = 3;

  /** Beyond so many deviations a few thousand samples of noise hold none: one of 150,000. */
  private static final double NO_NOISE = 4.5;

  private final double[] x;
  private final Transient.Settled settled;
  private final double first_s;
  private final double sampleRate_Hz;

  /**
   * @param x the transient, from the first sample after the edge on
   * @param first_s that sample's time after the edge
   */
  BandReturn(double[] x, Transient.Settled settled, double first_s, double sampleRate_Hz) {
    this.x = x;
    this.settled = settled;
    this.first_s = first_s;
    this.sampleRate_Hz = sampleRate_Hz;
  }

  Transient.Recovery state() {
    int last = lastOutside(settled.band());
    if (last < 0) {
      return Transient.Recovery.NEVER_LEFT;
    }
    return last == x.length - 1 ? Transient.Recovery.NOT_RECOVERED : Transient.Recovery.RECOVERED;
  }

  /** Time after the edge of the sample after the last one outside; 0 if none is. */
  double after_s(double band) {
    int last = lastOutside(band);
    return last < 0 ? 0 : first_s + (last + 1) / sampleRate_Hz;
  }

  /**
   * Half-width of the 95 % interval. Noise of standard deviation s keeps the slow end of a return
   * outside for as long as any of the samples on it may be: the true crossing is not before that of
   * a band widened by what the largest of them brings, and an error of the level widens it too.
   */
  double halfWidth_s() {
    double grid = 1 / sampleRate_Hz; // it was inside at that sample and outside at the one before
    double slowness = slowness();
    double crossing = slowness * settled.noise() * sampleRate_Hz;
    double wide = NoisyExtreme.halfWidth(settled.noise(), crossing, settled.correlated());
    return Math.hypot(grid, slowness * Math.hypot(wide, 2 * settled.u()));
  }

  /**
   * How long a return takes there, s for each V: between two bands that lie well apart, since a
   * single sample of noise may end either. The inner one still lies outside of the noise.
   */
  private double slowness() {
    double noise = Math.hypot(settled.noise(), settled.u());
    double out = APART * noise;
    double in = Math.max(0, Math.min(out, settled.band() - NO_NOISE * noise));
    double apart_s = after_s(settled.band() - in) - after_s(settled.band() + out);
    return noise > 0 ? apart_s / (in + out) : 0;
  }

  private int lastOutside(double band) {
    int last = x.length - 1;
    while (last >= 0 && Math.abs(x[last] - settled.level()) <= band) {
      last--;
    }
    return last;
  }
}
