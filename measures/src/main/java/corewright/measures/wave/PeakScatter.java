package corewright.measures.wave;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * How far the outermost values of a stretch scatter from stretch to stretch, of a series that may
 * be as smooth as a filter makes it: neighbours share one peak there, so that peaks are told apart
 * by taking one from each of many short parts. The mean distance of the outermost from the next is
 * the scale of a Gumbel distribution, as in {@link Tail}.
 *
 * @param highest standard uncertainty of the highest value
 * @param lowest the same of the lowest
 * @param highs where the outermost peaks to that side are, at least one
 * @param lows the same to the other
 * @see "Gumbel, Statistics of Extremes (1958), 5.2.1 and 7.2 (from memory)"
 */
public record PeakScatter(double highest, double lowest, List<Integer> highs, List<Integer> lows) {
  private static final int PARTS = 256;
  private static final int OUTERMOST = 10;
  private static final double GUMBEL = Math.PI / Math.sqrt(6);

  public PeakScatter {
    highs = List.copyOf(highs);
    lows = List.copyOf(lows);
  }

  /**
   * @param x without its slow trend
   * @param count at least one
   */
  public static PeakScatter of(IntToDoubleFunction x, int count) {
    List<Integer> highs = peaks(x, count);
    List<Integer> lows = peaks(i -> -x.applyAsDouble(i), count);
    int k = Math.min(OUTERMOST, Math.max(1, highs.size() / 4));
    // Gaussian noise falls ever faster: its scale goes as 1/√ln of how many peaks there are, and is
    // less at the very top than at the tenth.
    double parts = highs.size();
    double top = GUMBEL * Math.sqrt(Math.log(1 + parts / k) / Math.log(1 + parts));
    return new PeakScatter(
        top * excess(x, highs, k),
        top * excess(x, lows, k),
        highs.subList(0, k),
        lows.subList(0, k));
  }

  /** The highest of each part, the highest of all first. */
  private static List<Integer> peaks(IntToDoubleFunction x, int count) {
    int parts = Math.min(PARTS, count);
    List<Integer> peaks = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      int to = (int) ((part + 1L) * count / parts);
      int best = (int) ((long) part * count / parts);
      for (int i = best; i < to; i++) {
        best = x.applyAsDouble(i) > x.applyAsDouble(best) ? i : best;
      }
      peaks.add(best);
    }
    peaks.sort(Comparator.comparingDouble(i -> -x.applyAsDouble(i)));
    return peaks;
  }

  private static double excess(IntToDoubleFunction x, List<Integer> peaks, int k) {
    double next = x.applyAsDouble(peaks.get(Math.min(k, peaks.size() - 1)));
    return peaks.subList(0, k).stream()
        .mapToDouble(i -> Math.abs(x.applyAsDouble(i) - next))
        .average()
        .orElse(0);
  }
}
