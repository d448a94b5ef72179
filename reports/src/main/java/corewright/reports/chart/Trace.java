package corewright.reports.chart;

import corewright.measures.Capture;
import corewright.measures.Waveform;
import java.util.Arrays;
import java.util.List;

/**
 * A waveform as it is drawn: for each column of the picture the lowest, the highest and the mean of
 * the samples that fall into it. Extremes are kept, however many samples share a column, so no dip
 * is ever averaged away. A column without samples, or in which samples are missing, is NaN.
 */
final class Trace {
  /** Column edges are computed and may miss a sample by this part of one. */
  private static final double ROUNDING = 1e-6;

  private final double from_s;
  private final double to_s;
  private final double[] low;
  private final double[] high;
  private final double[] mean;

  private Trace(double from_s, double to_s, double[] low, double[] high, double[] mean) {
    this.from_s = from_s;
    this.to_s = to_s;
    this.low = low;
    this.high = high;
    this.mean = mean;
  }

  /**
   * @param rate_Hz sample rate
   * @param from_s where the first column begins, s from the first sample; may lie before it
   * @param to_s where the last column ends
   */
  static Trace of(
      Waveform wave,
      double rate_Hz,
      List<Capture.Gap> gaps,
      double from_s,
      double to_s,
      int columns) {
    double[] low = new double[columns];
    double[] high = new double[columns];
    double[] mean = new double[columns];
    double width = (to_s - from_s) / columns * rate_Hz;
    for (int column = 0; column < columns; column++) {
      double start = from_s * rate_Hz + column * width;
      int from = within(Math.ceil(start - ROUNDING), wave);
      int to = Math.max(from, within(Math.ceil(start + width - ROUNDING), wave));
      int held = (int) Math.floor(start + ROUNDING);
      if (to == from && held >= 0 && held < wave.size()) {
        from = held; // more columns than samples: each shows the sample that still holds
        to = held + 1;
      }
      fill(wave, from, to, gaps, low, high, mean, column);
    }
    return new Trace(from_s, to_s, low, high, mean);
  }

  private static int within(double sample, Waveform wave) {
    return (int) Math.max(0, Math.min(wave.size(), sample));
  }

  private static void fill(
      Waveform wave,
      int from,
      int to,
      List<Capture.Gap> gaps,
      double[] low,
      double[] high,
      double[] mean,
      int column) {
    if (from == to || gaps.stream().anyMatch(gap -> gap.touches(from, to))) {
      low[column] = high[column] = mean[column] = Double.NaN;
      return;
    }
    int lowest = Integer.MAX_VALUE;
    int highest = Integer.MIN_VALUE;
    long sum = 0;
    for (int i = from; i < to; i++) {
      int code = wave.codeAt(i);
      lowest = Math.min(lowest, code);
      highest = Math.max(highest, code);
      sum += code;
    }
    low[column] = wave.offset() + wave.lsb() * lowest;
    high[column] = wave.offset() + wave.lsb() * highest;
    mean[column] = wave.offset() + wave.lsb() * sum / (to - from);
  }

  /** The same columns on a time axis that begins elsewhere. */
  Trace shifted(double by_s) {
    return new Trace(from_s + by_s, to_s + by_s, low, high, mean);
  }

  int columns() {
    return mean.length;
  }

  /** Middle of a column, s. */
  double time_s(int column) {
    return from_s + (column + 0.5) * (to_s - from_s) / mean.length;
  }

  double low(int column) {
    return low[column];
  }

  double high(int column) {
    return high[column];
  }

  double mean(int column) {
    return mean[column];
  }

  /** Lowest sample of all; NaN if there is none. */
  double lowest() {
    return Arrays.stream(low).filter(Double::isFinite).min().orElse(Double.NaN);
  }

  /** Highest mean of a column; NaN if there is none. */
  double highestMean() {
    return Arrays.stream(mean).filter(Double::isFinite).max().orElse(Double.NaN);
  }

  /** Highest sample of all; NaN if there is none. */
  double highest() {
    return Arrays.stream(high).filter(Double::isFinite).max().orElse(Double.NaN);
  }
}
