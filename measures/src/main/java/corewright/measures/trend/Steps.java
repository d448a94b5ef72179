package corewright.measures.trend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sudden changes of a level, as an intermittent joint makes them: found as the partition into
 * constant stretches that costs least, each stretch charged a penalty; then kept only where the
 * lines on both sides do not meet. A slow drift, straight or bent, leaves no steps.
 *
 * <p>Noise is taken from neighbouring differences and must be about independent: average a record
 * in blocks longer than its correlation first. A step counts from five standard uncertainties on;
 * four were too few, since the partition has chosen the most likely places already. What rounding
 * leaves in a level is no noise: a quiet record that drifts is a staircase, and all points of a
 * stair are wrong by the same amount however many there are.
 *
 * @see "Jackson et al., An algorithm for optimal partitioning of data on an interval, IEEE Signal
 *     Process. Lett. 12 (2005) 105; Killick, Fearnhead and Eckley, J. Am. Stat. Assoc. 107 (2012)
 *     1590 (pruning)"
 */
public final class Steps {
  public static final int MOST_POINTS = 5000;

  private static final int LEAST_STRETCH = 3;
  private static final int NEAR = 50; // points on either side that a step is judged by
  private static final double CERTAIN = 5; // standard uncertainties
  private static final double MEDIAN_OF_NORMAL = 0.6744897501960817;

  private Steps() {}

  /**
   * A change.
   *
   * @param index first point of the new level
   * @param size new level less old, where they meet
   * @param u standard uncertainty of {@code size}
   */
  public record Step(int index, double size, double u) {}

  /**
   * @param x 6 to {@link #MOST_POINTS} points, evenly spaced
   * @param resolution standard deviation that the noise is at least, such as lsb/√12
   * @param rounding standard uncertainty that rounding leaves in the mean of any stretch
   */
  public static List<Step> find(double[] x, double resolution, double rounding) {
    if (x.length < 2 * LEAST_STRETCH || x.length > MOST_POINTS) {
      throw new IllegalArgumentException(
          "steps are looked for in "
              + 2 * LEAST_STRETCH
              + " to "
              + MOST_POINTS
              + " points, not "
              + x.length
              + "; average a longer record in blocks");
    }
    double noise = Math.max(noise(x), resolution);
    if (!(noise > 0)) {
      throw new IllegalArgumentException(
          "the points do not scatter; give the resolution of the channel");
    }
    int[] bounds = bounds(x, 3 * Math.log(x.length) * noise * noise);
    List<Step> steps = new ArrayList<>();
    for (int k = 1; k + 1 < bounds.length; k++) {
      Step step = judge(x, bounds[k - 1], bounds[k], bounds[k + 1], noise, rounding);
      if (Math.abs(step.size()) > CERTAIN * step.u()) {
        steps.add(step);
      }
    }
    return steps;
  }

  /** From the median of neighbouring differences, which a few steps do not move. */
  private static double noise(double[] x) {
    double[] d = new double[x.length - 1];
    for (int i = 0; i < d.length; i++) {
      d[i] = Math.abs(x[i + 1] - x[i]);
    }
    Arrays.sort(d);
    return d[d.length / 2] / MEDIAN_OF_NORMAL / Math.sqrt(2);
  }

  /** Begins of the stretches of the cheapest partition, and the end. */
  private static int[] bounds(double[] x, double penalty) {
    int n = x.length;
    double[] sum = new double[n + 1];
    double[] squares = new double[n + 1];
    for (int i = 0; i < n; i++) {
      double d = x[i] - x[0]; // the level itself would eat the digits
      sum[i + 1] = sum[i] + d;
      squares[i + 1] = squares[i] + d * d;
    }
    double[] best = new double[n + 1];
    int[] from = new int[n + 1];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    best[0] = -penalty;
    int[] open = new int[n + 1];
    int candidates = 0;
    for (int end = LEAST_STRETCH; end <= n; end++) {
      open[candidates++] = end - LEAST_STRETCH;
      double[] cost = new double[candidates];
      for (int c = 0; c < candidates; c++) {
        int start = open[c];
        double total = sum[end] - sum[start];
        cost[c] = best[start] + squares[end] - squares[start] - total * total / (end - start);
        if (cost[c] + penalty < best[end]) {
          best[end] = cost[c] + penalty;
          from[end] = start;
        }
      }
      // A start that is dearer by the penalty already can never become the cheapest again.
      int kept = 0;
      for (int c = 0; c < candidates; c++) {
        if (cost[c] <= best[end] + penalty) {
          open[kept++] = open[c];
        }
      }
      candidates = kept;
    }
    List<Integer> bounds = new ArrayList<>(List.of(n));
    for (int at = n; at > 0; at = from[at]) {
      bounds.add(0, from[at]);
    }
    return bounds.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Distance, at the bound, between the lines through the points near it on either side. */
  private static Step judge(
      double[] x, int before, int at, int after, double noise, double rounding) {
    Line left = Line.through(x, Math.max(before, at - NEAR), at, at - 0.5);
    Line right = Line.through(x, at, Math.min(after, at + NEAR), at - 0.5);
    double u = noise * Math.hypot(left.perNoise(), right.perNoise());
    return new Step(at, right.value() - left.value(), Math.hypot(u, Math.sqrt(2) * rounding));
  }

  /** Value of a fitted line at a place, and its standard uncertainty for noise of 1. */
  private record Line(double value, double perNoise) {
    static Line through(double[] x, int from, int to, double place) {
      int n = to - from;
      double centre = from + (n - 1) / 2.0;
      double mean = 0;
      double cross = 0;
      for (int i = from; i < to; i++) {
        mean += x[i] / n;
      }
      for (int i = from; i < to; i++) {
        cross += (i - centre) * (x[i] - mean);
      }
      double spread = n * ((double) n * n - 1) / 12;
      double away = place - centre;
      return new Line(mean + cross / spread * away, Math.sqrt(1.0 / n + away * away / spread));
    }
  }
}
