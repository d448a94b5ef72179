package corewright.bench.log;

import java.util.Arrays;

/**
 * Tells values that a tool repeats until the next poll from values that happen to be the same. A
 * tool that repeats does it a steady number of times; chance does not.
 */
final class HeldValues {
  private HeldValues() {}

  /**
   * How many rows a value is held for, 1 if every row is a sample of its own.
   *
   * @param about the channel before, in and after a crank
   */
  static int rowsPerSample(Series about) {
    int[] runs = runs(about);
    if (runs.length < 8) {
      return 1; // six inner runs at least: the outer two may be cut
    }
    int[] inner = Arrays.copyOfRange(runs, 1, runs.length - 1);
    Arrays.sort(inner);
    return Math.max(1, inner[inner.length / 5]);
  }

  /** The samples among the rows: the first of each run, and one more for each full repetition. */
  static Series samples(Series rows, int rowsPerSample) {
    if (rowsPerSample <= 1) {
      return rows;
    }
    double[] t = new double[rows.size()];
    double[] v = new double[rows.size()];
    int n = 0;
    int start = 0;
    for (int i = 0; i < rows.size(); i++) {
      if (i > 0 && rows.value(i) != rows.value(i - 1)) {
        start = i;
      }
      int held = i - start;
      boolean first = held == 0;
      boolean again = held % rowsPerSample == 0 && restOfRun(rows, i) * 2 >= rowsPerSample;
      if (first || again) {
        t[n] = rows.t_s(i);
        v[n++] = rows.value(i);
      }
    }
    return new Series(Arrays.copyOf(t, n), Arrays.copyOf(v, n));
  }

  private static int restOfRun(Series rows, int from) {
    int i = from;
    while (i < rows.size() && rows.value(i) == rows.value(from)) {
      i++;
    }
    return i - from;
  }

  private static int[] runs(Series s) {
    int[] runs = new int[s.size()];
    int n = 0;
    for (int i = 0; i < s.size(); i++) {
      if (i == 0 || s.value(i) != s.value(i - 1)) {
        n++;
      }
      runs[n - 1]++;
    }
    return Arrays.copyOf(runs, n);
  }
}
