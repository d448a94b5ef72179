package corewright.bench.log.table;

import java.util.List;
import java.util.regex.Pattern;

/** How well pieces of a row cut at every comma fit one column, alone or two joined. */
final class PieceScore {
  private final Label label;
  private final List<List<String>> rows;

  PieceScore(Label label, List<List<String>> rows) {
    this.label = label;
    this.rows = rows;
  }

  /** Scores of the pieces {@code first} to {@code last}, each as the whole cell. */
  double[] singles(int first, int last) {
    double[] scores = new double[last - first + 1];
    for (int p = first; p <= last; p++) {
      scores[p - first] = p < rows.get(0).size() ? plausible(p, false) : Double.NEGATIVE_INFINITY;
    }
    return scores;
  }

  /** Scores of the pieces {@code first} to {@code last}, each with the one after it. */
  double[] doubles(int first, int last) {
    double[] scores = new double[last - first + 1];
    for (int p = first; p <= last; p++) {
      boolean room = p + 1 < rows.get(0).size();
      scores[p - first] =
          room && joins(p) ? plausible(p, true) + shape(p + 1) : Double.NEGATIVE_INFINITY;
    }
    return scores;
  }

  /** What may stand before a decimal comma: whole digits with a sign, or a clock's seconds. */
  static boolean canBegin(String piece) {
    if (piece.isEmpty() || !Character.isDigit(piece.charAt(piece.length() - 1))) {
      return false;
    }
    return digits(piece.charAt(0) == '-' ? piece.substring(1) : piece) || piece.indexOf(':') > 0;
  }

  /**
   * What may stand after one: digits; after a clock's seconds also what follows them, as {@code 310
   * PM} and {@code 310+01:00}.
   */
  static boolean canEnd(String begin, String piece) {
    boolean clock = begin.indexOf(':') > 0;
    return digits(piece) || (clock && AFTER_SECONDS.matcher(piece).matches());
  }

  private static final Pattern AFTER_SECONDS =
      Pattern.compile("\\d{1,9} ?([AaPp]\\.? ?[Mm]\\.?|Z|[A-Z]{2,4}|[+-]\\d{2}:?\\d{2})");

  /** Decimals that a piece may have at most; days of a spreadsheet have nine and more. */
  private static final int MOST_DECIMALS = 12;

  static boolean digits(String piece) {
    return !piece.isEmpty() && piece.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private boolean joins(int piece) {
    return rows.stream()
        .allMatch(
            r ->
                canBegin(r.get(piece))
                    && canEnd(r.get(piece), r.get(piece + 1))
                    && r.get(piece + 1).length() <= MOST_DECIMALS);
  }

  /**
   * Exporters write a fixed number of decimals, and only a fraction begins with a zero where more
   * digits follow.
   */
  private double shape(int piece) {
    int width = rows.get(0).get(piece).length();
    boolean fixed = rows.stream().allMatch(r -> r.get(piece).length() == width);
    boolean zeroFirst =
        rows.stream().anyMatch(r -> r.get(piece).length() > 1 && r.get(piece).charAt(0) == '0');
    return (fixed ? 1 : -1) + (zeroFirst ? 2 : 0);
  }

  /** The share of rows whose value lies where the name says it belongs; times three. */
  private double plausible(int piece, boolean joined) {
    double[] values = new double[rows.size()];
    boolean text = false;
    for (int r = 0; r < values.length; r++) {
      String cell = rows.get(r).get(piece) + (joined ? "," + rows.get(r).get(piece + 1) : "");
      ClockCell clock = ClockCell.of(cell);
      values[r] =
          clock.form() == ClockCell.Form.NONE ? NumberCell.value(cell, ',') : clock.seconds();
      text |= Double.isNaN(values[r]);
    }
    if (Vocabulary.TIME_CORE.in(label) && !Vocabulary.NOT_TIME.in(label)) {
      Rise rise = Rise.of(values);
      return 4 * (rise.share() > 0.97 ? 1 + (1 - rise.level()) : 0);
    }
    boolean output = Vocabulary.OUTPUT_SURE.in(label);
    if (output || Vocabulary.SUPPLY.in(label)) {
      double low = output ? 15 : 5;
      double high = output ? 150 : 36;
      return 3 * share(values, low, high) + (text ? -1 : 0) - (joined ? 0 : 1);
    }
    if (Vocabulary.SPEED.in(label)) {
      return 3 * share(values, 0, 6000) - (joined ? 1 : 0);
    }
    return 0;
  }

  private static double share(double[] values, double low, double high) {
    int in = 0;
    for (double v : values) {
      if (v >= low && v <= high) {
        in++;
      }
    }
    return in / (double) values.length;
  }
}
