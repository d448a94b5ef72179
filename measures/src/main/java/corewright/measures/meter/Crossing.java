package corewright.measures.meter;

/**
 * How well the first crossing of a level is known that was found between two samples by a straight
 * line, in samples. A curve that bends as much as it steps there may have crossed anywhere between
 * the two, one that hardly bends is its own straight line; and noise moves every sample on the way
 * that lies as near to the level as it reaches.
 *
 * <p>A kink at the part d of the way from one sample to the next puts the curve off the line by d
 * times bend over step there, and by less before and after; the root of the mean square of that,
 * over all kinks and levels, is a third of bend over step. A smooth bend stays within an eighth.
 *
 * @param u standard uncertainty, samples
 */
record Crossing(double u) {
  private static final double RECTANGULAR = 1 / Math.sqrt(12);
  private static final double OF_ANY_KINK = 1.0 / 3;

  /**
   * @param up sample before which the level is first reached
   * @param noise standard deviation of a sample
   */
  static Crossing of(double[] x, int up, double level, double noise) {
    int near = 0;
    int after = 1;
    while (after < x.length - 1 && x[after] < level) {
      after++;
    }
    for (int i = 0; i < up; i++) {
      near += Math.abs(x[i] - level) <= noise ? 1 : 0;
    }
    double step = Math.abs(x[after] - x[after - 1]);
    double bend = Math.max(bend(x, after - 1), bend(x, after));
    double between = step > bend ? bend / step : 1;
    double moved = step > noise ? noise / step : 1;
    return new Crossing(Root.of(between * OF_ANY_KINK, moved, near * RECTANGULAR));
  }

  private static double bend(double[] x, int i) {
    return i == 0 || i + 1 >= x.length ? 0 : Math.abs(x[i - 1] - 2 * x[i] + x[i + 1]);
  }
}
