package corewright.measures.pulse;

/**
 * The two levels that a step connects: the fullest bin of each half of a histogram of all samples.
 *
 * <p>A level is known to half a bin. The mode is used and not the mean of each half, which ringing
 * pulls along: by 1.1 V on a step of 36 V with 25 % overshoot.
 *
 * @param low middle of the fullest bin of the lower half
 * @param high middle of the fullest bin of the upper half
 * @param binWidth in the unit of the samples
 * @see "IEC 60469:2013, 5.2 histogram methods (clause from memory)"
 */
public record StateLevels(double low, double high, double binWidth) {

  /**
   * @param bins an even number, at least 10; more of them narrow the levels until noise spreads
   *     each level over several
   * @throws IllegalArgumentException if the record never changes
   */
  public static StateLevels of(double[] x, int bins) {
    if (bins < 10 || bins % 2 != 0) {
      throw new IllegalArgumentException("an even number of bins from 10 on, not " + bins);
    }
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (double value : x) {
      lowest = Math.min(lowest, value);
      highest = Math.max(highest, value);
    }
    if (!(lowest < highest)) {
      throw new IllegalArgumentException("a record that never changes has no two levels");
    }
    double width = (highest - lowest) / bins;
    int[] histogram = new int[bins];
    for (double value : x) {
      histogram[Math.min(bins - 1, (int) ((value - lowest) / width))]++;
    }
    return new StateLevels(
        lowest + width * (fullest(histogram, 0, bins / 2) + 0.5),
        lowest + width * (fullest(histogram, bins / 2, bins) + 0.5),
        width);
  }

  private static int fullest(int[] histogram, int from, int to) {
    int best = from;
    for (int i = from; i < to; i++) {
      best = histogram[i] > histogram[best] ? i : best;
    }
    return best;
  }

  /** Standard uncertainty of either level: anywhere within its bin (JCGM 100, F.2.2.1). */
  public double u() {
    return binWidth / Math.sqrt(12);
  }
}
