package corewright.measures.hold;

import corewright.measures.Waveform;

/**
 * The 50 % instant of an edge between two levels.
 *
 * @see "IEC 60469:2013, mid-reference-level instant"
 */
final class EdgeLocator {
  /** Samples this close to the middle, as a part of the step, belong to the ramp. */
  private static final double RAMP = 0.3;

  private static final int ENOUGH_FOR_LINE = 4;

  private EdgeLocator() {}

  /**
   * Position of the middle as a sample index with its fraction.
   *
   * <p>Steep edges: straight line between the two samples that straddle the middle. Slow or noisy
   * ones: least-squares line through the ramp around the split that puts the fewest samples on the
   * wrong side, which noise moves no further than a fraction of its own width.
   *
   * @param from a sample still on the old level
   * @param to a sample already on the new level
   */
  static double middle(Waveform load, int from, int to, double oldLevel, double newLevel) {
    double middle = (oldLevel + newLevel) / 2;
    double sign = Math.signum(newLevel - oldLevel);
    int split = split(load, from, to, middle, sign);
    int ramp = 0;
    for (int i = from; i <= to; i++) {
      if (Math.abs(load.at(i) - middle) < RAMP * Math.abs(newLevel - oldLevel)) {
        ramp++;
      }
    }
    if (ramp >= ENOUGH_FOR_LINE) {
      int reach = Math.max(1, ramp / 2);
      return fitted(
          load, Math.max(from, split - reach), Math.min(to, split + reach), middle, split);
    }
    double before = load.at(split - 1);
    double after = load.at(split);
    double part = after == before ? 0.5 : (middle - before) / (after - before);
    return split - 1 + Math.max(0, Math.min(1, part));
  }

  /** First sample of the new side, such that the fewest samples are on the wrong side. */
  private static int split(Waveform load, int from, int to, double middle, double sign) {
    int best = from + 1;
    int wrong = 0;
    int fewest = Integer.MAX_VALUE;
    for (int i = from; i < to; i++) {
      wrong += sign * (load.at(i) - middle) >= 0 ? 1 : -1; // i joins the old side
      if (wrong < fewest) {
        fewest = wrong;
        best = i + 1;
      }
    }
    return best;
  }

  private static double fitted(Waveform load, int from, int to, double middle, int split) {
    int n = to - from + 1;
    double centre = (from + to) / 2.0;
    double mean = 0;
    double cross = 0;
    double spread = 0;
    for (int i = from; i <= to; i++) {
      mean += load.at(i) / n;
      cross += (i - centre) * load.at(i);
      spread += (i - centre) * (i - centre);
    }
    double slope = cross / spread;
    double at = slope == 0 ? split : centre + (middle - mean) / slope;
    return Math.max(from, Math.min(to, at));
  }
}
