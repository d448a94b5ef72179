package corewright.station.cli;

import corewright.bench.log.Crank;
import corewright.bench.log.Dot;
import corewright.bench.log.Trace;
import corewright.bench.log.table.Role;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The samples of a crank as dots in a terminal; nothing is drawn between them, since nothing is
 * known there. The judged time lies between bars.
 */
final class DotPlot {
  private static final int COLUMNS = 64;
  private static final int ROWS = 9;
  private static final double BEFORE_S = 2;
  private static final double AFTER_S = 2;

  private final Crank crank;
  private final double from_s;
  private final double to_s;

  DotPlot(Crank crank) {
    this.crank = crank;
    this.from_s = crank.start_s() - BEFORE_S;
    this.to_s = crank.end_s() + AFTER_S;
  }

  void print(PrintWriter out) {
    for (Trace trace : crank.traces()) {
      if (trace.role() == Role.OUTPUT || trace.role() == Role.SUPPLY) {
        print(trace, out);
      }
    }
  }

  private void print(Trace trace, PrintWriter out) {
    List<Dot> dots =
        trace.dots().stream().filter(d -> d.t_s() >= from_s && d.t_s() <= to_s).toList();
    if (dots.isEmpty()) {
      return;
    }
    double low = Math.floor(dots.stream().mapToDouble(Dot::value).min().orElse(0));
    double high =
        Math.max(low + 1, Math.ceil(dots.stream().mapToDouble(Dot::value).max().orElse(1)));
    char[][] grid = new char[ROWS][COLUMNS];
    for (char[] row : grid) {
      Arrays.fill(row, ' ');
    }
    crank.window().ifPresent(w -> bars(grid, column(w.start_s()), column(w.end_s())));
    for (Dot d : dots) {
      int row = (int) Math.round((high - d.value()) / (high - low) * (ROWS - 1));
      grid[row][column(d.t_s())] = '•';
    }
    out.println("  " + trace.title() + ", V");
    for (int r = 0; r < ROWS; r++) {
      double value = high - (high - low) * r / (ROWS - 1);
      String label = r % 4 == 0 ? String.format(Locale.ROOT, "%6.1f", value) : "      ";
      out.println("  " + label + " ┤" + new String(grid[r]).stripTrailing());
    }
    String left = String.format(Locale.ROOT, "%.1f s", from_s);
    String right = String.format(Locale.ROOT, "%.1f s", to_s);
    out.println(
        "          "
            + left
            + " ".repeat(Math.max(1, COLUMNS - left.length() - right.length()))
            + right);
  }

  private static void bars(char[][] grid, int from, int to) {
    for (char[] row : grid) {
      row[from] = '│';
      row[to] = '│';
    }
  }

  private int column(double t_s) {
    double share = (t_s - from_s) / (to_s - from_s);
    return (int) Math.max(0, Math.min(COLUMNS - 1, Math.round(share * (COLUMNS - 1))));
  }
}
