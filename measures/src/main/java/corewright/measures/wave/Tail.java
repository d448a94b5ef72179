package corewright.measures.wave;

import corewright.measures.Waveform;
import java.util.Arrays;

/**
 * How far apart the lowest samples of a stretch lie: the mean distance of the ten lowest from the
 * eleventh is the scale of their scatter for every tail that falls like an exponential or faster,
 * and next to nothing where a signal has a firm bottom.
 *
 * @see "Gumbel, Statistics of Extremes (1958), 5.2.1"
 */
public record Tail(double lowest) {
  private static final int OUTERMOST = 10;

  /** So few values know the scale to this part; one too small is not made good by one too large. */
  private static final double UNSURE = 1 / Math.sqrt(OUTERMOST);

  public static Tail of(Waveform wave, int from, int to) {
    int k = Math.min(OUTERMOST, Math.max(1, (to - from) / 4));
    int[] low = new int[k + 1];
    Arrays.fill(low, Integer.MAX_VALUE);
    for (int i = from; i < to; i++) {
      int code = wave.codeAt(i);
      if (code < low[k]) {
        int j = k;
        for (; j > 0 && low[j - 1] > code; j--) {
          low[j] = low[j - 1];
        }
        low[j] = code;
      }
    }
    return to - from <= k ? new Tail(0) : new Tail(wave.lsb() * excess(low));
  }

  private static double excess(int[] sorted) {
    double sum = 0;
    for (int code : sorted) {
      sum += Math.abs((double) code - sorted[sorted.length - 1]);
    }
    return sum / (sorted.length - 1);
  }

  /**
   * Half-width of a 95 % interval about the lowest sample as the lowest that there is without
   * noise. The standard deviation of the noise is taken from its tail: scale·√(2 ln(n/10)).
   *
   * @param step resolution: steps wider than the tail hide it
   * @param settled scatter of the window that the tail was taken from, about its trend: it contains
   *     ripple, and the noise is not above it
   * @param wave {@code [from, to)} of it is what the lowest was taken from
   */
  public double lowestU(double step, CorrelatedScatter settled, Waveform wave, int from, int to) {
    double window = settled.count();
    double factor = Math.sqrt(2 * Math.log(Math.max(2, window / OUTERMOST)));
    double noise = Math.min(settled.sd(), (lowest + step / 2) * factor * (1 + UNSURE));
    double correlated = Math.max(1, window / settled.effectiveCount());
    int sharing =
        NoisyExtreme.sharing(
            i -> wave.codeAt(from + i), to - from, noise / wave.lsb(), correlated, 1);
    return NoisyExtreme.halfWidth(noise, sharing, correlated);
  }
}
