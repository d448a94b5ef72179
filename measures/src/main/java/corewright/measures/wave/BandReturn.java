package corewright.measures.wave;

/** The last return of a transient into the band around its settled level. */
final class BandReturn {
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
   * a band widened by what the largest of them brings. An error of the level acts to both sides.
   */
  double halfWidth_s() {
    double band = settled.band();
    double at = after_s(band);
    double crossing =
        (after_s(band - settled.noise()) - after_s(band + settled.noise())) / 2 * sampleRate_Hz;
    double wide = NoisyExtreme.halfWidth(settled.noise(), crossing, settled.correlated());
    double narrow = NoisyExtreme.otherHalfWidth(settled.noise(), crossing, settled.correlated());
    double earlier = at - after_s(band + Math.hypot(wide, 2 * settled.u()));
    double later = after_s(band - Math.hypot(narrow, 2 * settled.u())) - at;
    double grid = 1 / sampleRate_Hz; // it was inside at that sample and outside at the one before
    return Math.hypot(grid, Math.max(earlier, later));
  }

  private int lastOutside(double band) {
    int last = x.length - 1;
    while (last >= 0 && Math.abs(x[last] - settled.level()) <= band) {
      last--;
    }
    return last;
  }
}
