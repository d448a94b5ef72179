package corewright.bench.log;

import corewright.bench.log.table.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;

/** Watches rows go by and notes how regularly they come. */
final class Pace implements Iterator<Row> {
  private static final int MOST_STEPS = 100_000;

  /** A step longer than this is a pause and no rate, s. */
  private static final double PAUSE_S = 5;

  private final Iterator<Row> rows;
  private final Overview overview;
  private final long[] filled;
  private final double[] steps = new double[MOST_STEPS];
  private int counted;
  private double longest_s;
  private double total_s;
  private double first_s = Double.NaN;
  private double last_s = Double.NaN;
  private int segment = -1;

  /**
   * How regular the rows of a log are.
   *
   * @param medianStep_s from row to row, s; of the first hundred thousand; NaN for fewer than two
   * @param longestGap_s within a segment, s
   * @param first_s stamp of the first row, s
   * @param last_s stamp of the last row, s
   * @param rates_Hz values a second for each kept channel, pauses left out
   */
  public record Figures(
      double medianStep_s,
      double longestGap_s,
      double first_s,
      double last_s,
      List<Double> rates_Hz) {
    public Figures {
      rates_Hz = List.copyOf(rates_Hz);
    }
  }

  /** Watches {@code rows}, and shows each to the overview. */
  Pace(Iterator<Row> rows, int channels, Overview overview) {
    this.rows = rows;
    this.overview = overview;
    this.filled = new long[channels];
  }

  @Override
  public boolean hasNext() {
    return rows.hasNext();
  }

  @Override
  public Row next() {
    Row row = rows.next();
    overview.take(row);
    first_s = Double.isNaN(first_s) ? row.t_s() : first_s;
    if (row.segment() == segment) {
      double step_s = row.t_s() - last_s;
      longest_s = Math.max(longest_s, step_s);
      total_s += step_s < PAUSE_S ? step_s : 0;
      if (counted < MOST_STEPS && step_s > 0) {
        steps[counted++] = step_s;
      }
    }
    segment = row.segment();
    last_s = row.t_s();
    for (int c = 0; c < filled.length; c++) {
      filled[c] += Double.isNaN(row.value(c)) ? 0 : 1;
    }
    return row;
  }

  Figures figures() {
    double[] sorted = Arrays.copyOf(steps, counted);
    Arrays.sort(sorted);
    List<Double> rates = new ArrayList<>();
    for (long n : filled) {
      rates.add(total_s > 0 ? n / total_s : 0.0);
    }
    return new Figures(Stats.median(sorted), longest_s, first_s, last_s, rates);
  }
}
