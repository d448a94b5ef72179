package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Rows whose decimal mark is the delimiter too: {@code 0,31,142,9,7} under three names. Each column
 * takes one piece or two; which, is found once for the whole file from the names and from what the
 * pieces look like. A row that does not fit is dropped, never guessed.
 */
final class CommaPairs {
  /** More ways than this to share the pieces out are not tried. */
  private static final int MOST_WAYS = 200_000;

  private final boolean[] doubled;

  private CommaPairs(boolean[] doubled) {
    this.doubled = doubled;
  }

  int columns() {
    return doubled.length;
  }

  /** What was found for the head of a file. */
  sealed interface Found {
    record Pairs(CommaPairs pairs) implements Found {}

    /** Two ways to share the pieces out fit equally well. */
    record Ambiguous() implements Found {}

    record None() implements Found {}
  }

  /**
   * Looks for the one way to share the pieces out.
   *
   * @param names of the columns
   * @param rows pieces of rows of data, all of one length
   */
  static Found find(List<String> names, List<List<String>> rows) {
    int pieces = rows.isEmpty() ? 0 : rows.get(0).size();
    int columns = names.size();
    if (columns < 2 || pieces <= columns || pieces > 2 * columns) {
      return new Found.None();
    }
    Search search = new Search(names, rows, pieces - columns);
    search.from(0, 0, 0);
    if (search.best.isEmpty()) {
      return new Found.None();
    }
    return search.tied()
        ? new Found.Ambiguous()
        : new Found.Pairs(new CommaPairs(search.best.get()));
  }

  /** Joins the pieces of a row in place; false if they do not fit. */
  boolean join(Cells cells) {
    int[] first = new int[doubled.length];
    int[] last = new int[doubled.length];
    int piece = 0;
    for (int c = 0; c < doubled.length; c++) {
      if (piece >= cells.count()) {
        return false;
      }
      first[c] = piece;
      String begin = cells.text(piece);
      boolean two = doubled[c] && PieceScore.canBegin(begin);
      if (two && (piece + 1 >= cells.count() || !PieceScore.canEnd(begin, cells.text(piece + 1)))) {
        return false;
      }
      last[c] = two ? piece + 1 : piece;
      piece = last[c] + 1;
    }
    if (piece != cells.count()) {
      return false;
    }
    cells.join(first, last);
    return true;
  }

  /** Every way to give {@code twos} of the columns two pieces, the best and the next best kept. */
  private static final class Search {
    private static final double TIE = 0.25;
    private final double[][] single;
    private final double[][] twice;
    private final int columns;
    private final int twos;
    private final boolean[] chosen;
    private Optional<boolean[]> best = Optional.empty();
    private double bestScore = Double.NEGATIVE_INFINITY;
    private double nextScore = Double.NEGATIVE_INFINITY;
    private int ways;

    Search(List<String> names, List<List<String>> rows, int twos) {
      this.columns = names.size();
      this.twos = twos;
      this.chosen = new boolean[columns];
      this.single = new double[columns][];
      this.twice = new double[columns][];
      List<PieceScore> scores = new ArrayList<>();
      for (String name : names) {
        scores.add(new PieceScore(Label.of(name, ""), rows));
      }
      for (int c = 0; c < columns; c++) {
        single[c] = scores.get(c).singles(c, c + twos);
        twice[c] = scores.get(c).doubles(c, c + twos);
      }
    }

    void from(int column, int given, double score) {
      if (ways > MOST_WAYS) {
        return;
      }
      if (column == columns) {
        if (given == twos) {
          keep(score);
        }
        return;
      }
      double one = single[column][given];
      if (columns - column - 1 >= twos - given && one > Double.NEGATIVE_INFINITY) {
        chosen[column] = false;
        from(column + 1, given, score + one);
      }
      if (given < twos && twice[column][given] > Double.NEGATIVE_INFINITY) {
        chosen[column] = true;
        from(column + 1, given + 1, score + twice[column][given]);
      }
    }

    private void keep(double score) {
      ways++;
      if (score > bestScore) {
        nextScore = bestScore;
        bestScore = score;
        best = Optional.of(Arrays.copyOf(chosen, columns));
      } else {
        nextScore = Math.max(nextScore, score);
      }
    }

    boolean tied() {
      return ways > MOST_WAYS || nextScore > bestScore - TIE;
    }
  }
}
