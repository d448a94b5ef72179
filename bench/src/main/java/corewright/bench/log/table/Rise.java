package corewright.bench.log.table;

import java.util.Arrays;

/**
 * How a column moves from row to row, the question for a column of time.
 *
 * @param share of the steps that go up or stay level; 0 if it hardly moves at all
 * @param median of the steps that go up
 * @param level share of the steps that stay level
 * @param wholeSteps whether every step up is exactly one
 */
record Rise(double share, double median, double level, boolean wholeSteps) {

  static Rise of(double[] values) {
    int steps = 0;
    int up = 0;
    int level = 0;
    boolean ones = true;
    double[] ups = new double[values.length];
    double last = Double.NaN;
    for (double value : values) {
      if (Double.isNaN(value)) {
        continue;
      }
      if (!Double.isNaN(last)) {
        steps++;
        if (value > last) {
          ones &= value - last == 1;
          ups[up++] = value - last;
        } else if (value == last) {
          level++;
        }
      }
      last = value;
    }
    boolean moves = up > 0 && (up + level == steps || up > 0.1 * steps);
    if (!moves) {
      return new Rise(0, Double.NaN, 1, false);
    }
    double[] sorted = Arrays.copyOf(ups, up);
    Arrays.sort(sorted);
    double share = (up + level) / (double) steps * Math.min(1, steps / (values.length * 0.03));
    return new Rise(share, sorted[up / 2], level / (double) steps, ones);
  }
}
