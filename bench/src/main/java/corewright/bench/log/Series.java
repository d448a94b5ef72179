package corewright.bench.log;

import corewright.bench.log.table.Row;
import java.util.Arrays;
import java.util.List;

/** Samples of one channel in the order of time, those without a value left out. */
final class Series {
  private final double[] t_s;
  private final double[] values;

  Series(double[] t_s, double[] values) {
    this.t_s = t_s.clone();
    this.values = values.clone();
  }

  static Series of(List<Row> rows, int channel) {
    double[] t = new double[rows.size()];
    double[] v = new double[rows.size()];
    int n = 0;
    for (Row row : rows) {
      if (!Double.isNaN(row.value(channel))) {
        t[n] = row.t_s();
        v[n++] = row.value(channel);
      }
    }
    return new Series(Arrays.copyOf(t, n), Arrays.copyOf(v, n));
  }

  /** Samples from {@code from_s} to {@code to_s}, both inclusive. */
  Series within(double from_s, double to_s) {
    int first = 0;
    while (first < t_s.length && t_s[first] < from_s) {
      first++;
    }
    int end = first;
    while (end < t_s.length && t_s[end] <= to_s) {
      end++;
    }
    return new Series(Arrays.copyOfRange(t_s, first, end), Arrays.copyOfRange(values, first, end));
  }

  int size() {
    return t_s.length;
  }

  boolean isEmpty() {
    return t_s.length == 0;
  }

  double t_s(int i) {
    return t_s[i];
  }

  double value(int i) {
    return values[i];
  }

  double first() {
    return values[0];
  }

  double last() {
    return values[values.length - 1];
  }

  /** From the first to the last sample, s; 0 for fewer than two. */
  double span_s() {
    return isEmpty() ? 0 : t_s[t_s.length - 1] - t_s[0];
  }

  double[] sorted() {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted;
  }

  /** The usual time from sample to sample, s; 0 for fewer than two. */
  double medianStep_s() {
    double[] steps = new double[Math.max(0, t_s.length - 1)];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = t_s[i + 1] - t_s[i];
    }
    Arrays.sort(steps);
    return steps.length == 0 ? 0 : steps[steps.length / 2];
  }

  boolean constant() {
    return isEmpty() || Arrays.stream(values).allMatch(v -> v == values[0]);
  }

  /** The longest time without a sample between {@code from_s} and {@code to_s}, edges included. */
  double longestSilence_s(double from_s, double to_s) {
    double longest = 0;
    double last = from_s;
    for (int i = 0; i < t_s.length; i++) {
      if (t_s[i] > from_s && t_s[i] < to_s) {
        longest = Math.max(longest, t_s[i] - last);
        last = t_s[i];
      }
    }
    return Math.max(longest, to_s - last);
  }

  /** The time between {@code from_s} and {@code to_s} in silences longer than {@code usual_s}. */
  double silent_s(double from_s, double to_s, double usual_s) {
    double silent = 0;
    double last = from_s;
    for (int i = 0; i <= t_s.length; i++) {
      double at = i < t_s.length ? t_s[i] : to_s;
      if (at > from_s && at <= to_s) {
        silent += at - last > usual_s ? at - last : 0;
        last = at;
      }
    }
    return silent;
  }
}
