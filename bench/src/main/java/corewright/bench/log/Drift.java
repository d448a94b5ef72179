package corewright.bench.log;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * How fast a channel moves: the median of the slopes between all pairs of samples, with an interval
 * from resampled blocks. The same samples always give the same interval.
 *
 * @param slope_V_s best estimate, V/s
 * @param low_V_s lower end of the 95 % interval, V/s
 * @param high_V_s upper end, V/s
 * @see "Theil (1950); Sen (1968), Estimates of the regression coefficient based on Kendall's tau"
 * @see "Künsch (1989), The jackknife and the bootstrap for general stationary observations"
 */
record Drift(double slope_V_s, double low_V_s, double high_V_s) {
  private static final int MOST_POINTS = 48;
  private static final int RESAMPLES = 200;
  private static final long SEED = 20251103;

  /**
   * Fits one.
   *
   * @param quantum_V smallest step of the channel: an end may be wrong by half of it, V
   */
  static Drift of(Series samples, double quantum_V) {
    Series s = thinned(samples);
    int n = s.size();
    if (n < 2 || s.span_s() <= 0) {
      return new Drift(0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    int[] all = new int[n];
    Arrays.setAll(all, i -> i);
    double slope = slope(s, all);
    int block = n < 8 ? 1 : Math.max(2, (int) Math.round(Math.cbrt(n)));
    SplittableRandom random = new SplittableRandom(SEED);
    double[] slopes = new double[RESAMPLES];
    int[] picked = new int[n];
    for (int r = 0; r < RESAMPLES; r++) {
      for (int i = 0; i < n; i += block) {
        int from = random.nextInt(n - block + 1);
        for (int k = 0; k < block && i + k < n; k++) {
          picked[i + k] = from + k;
        }
      }
      double again = slope(s, picked);
      slopes[r] = Double.isNaN(again) ? slope : again;
    }
    Arrays.sort(slopes);
    double coarse = quantum_V / s.span_s() / 2;
    return new Drift(
        slope,
        Math.min(slope, Stats.quantile(slopes, 0.025)) - coarse,
        Math.max(slope, Stats.quantile(slopes, 0.975)) + coarse);
  }

  /**
   * Fast logs are cut to block medians: the slope needs no more, and pairs grow with the square.
   */
  private static Series thinned(Series s) {
    if (s.size() <= MOST_POINTS) {
      return s;
    }
    double[] t = new double[MOST_POINTS];
    double[] v = new double[MOST_POINTS];
    for (int i = 0; i < MOST_POINTS; i++) {
      int from = (int) ((long) i * s.size() / MOST_POINTS);
      int to = (int) ((long) (i + 1) * s.size() / MOST_POINTS);
      double[] block = new double[to - from];
      for (int k = from; k < to; k++) {
        block[k - from] = s.value(k);
        t[i] += s.t_s(k) / (to - from);
      }
      Arrays.sort(block);
      v[i] = Stats.median(block);
    }
    return new Series(t, v);
  }

  private static double slope(Series s, int[] picked) {
    double[] slopes = new double[picked.length * (picked.length - 1) / 2];
    int n = 0;
    for (int i = 0; i < picked.length; i++) {
      for (int k = i + 1; k < picked.length; k++) {
        double step_s = s.t_s(picked[k]) - s.t_s(picked[i]);
        if (step_s != 0) {
          slopes[n++] = (s.value(picked[k]) - s.value(picked[i])) / step_s;
        }
      }
    }
    double[] sorted = Arrays.copyOf(slopes, n);
    Arrays.sort(sorted);
    return Stats.median(sorted);
  }
}
