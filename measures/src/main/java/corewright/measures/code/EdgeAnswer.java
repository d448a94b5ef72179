package corewright.measures.code;

/**
 * How a channel answers a load edge, in codes and samples.
 *
 * @param lowest code before settling ends
 * @param recovery samples from the edge to the one after the last outside the band; 0 where none
 *     is, and {@link #LATER} where only what came before settling was kept and one came after it
 */
public record EdgeAnswer(int lowest, int recovery) {
  /** The output was outside the band after it should have settled. */
  public static final int LATER = -1;

  /**
   * @param edge first sample after the edge
   * @param settled after the last sample that is searched for the lowest
   * @param window statistics of the settled samples {@code [settled, to)}
   * @param band half-width of the recovery band about their mean, codes
   * @throws IllegalArgumentException if there is no sample before settling ends
   */
  public static EdgeAnswer of(
      Codes codes, int edge, int settled, int to, CodeStatistics window, double band) {
    codes.require(edge, settled);
    codes.require(settled, to);
    if (settled == edge) {
      throw new IllegalArgumentException("no sample lies between the edge and the settled window");
    }
    Band about = Band.about(window.mean(), band);
    // Extremes within the band: nothing in the window can be outside, and it need not be read.
    int end = isSteady(window, about) ? settled : to;
    return new EdgeAnswer(lowest(codes, edge, settled), recovery(codes, edge, end, about));
  }

  /** The same of the settling part alone, the window being gone. */
  static EdgeAnswer ofSettling(Codes settling, CodeStatistics window, double band) {
    Band about = Band.about(window.mean(), band);
    int lowest = lowest(settling, 0, settling.size());
    return isSteady(window, about)
        ? new EdgeAnswer(lowest, recovery(settling, 0, settling.size(), about))
        : new EdgeAnswer(lowest, LATER);
  }

  private static boolean isSteady(CodeStatistics window, Band band) {
    return band.holds(window.lowest()) && band.holds(window.highest());
  }

  private static int recovery(Codes codes, int edge, int to, Band band) {
    int last = band.lastOutside(codes, edge, to);
    return last < 0 ? 0 : last + 1 - edge;
  }

  private static int lowest(Codes codes, int from, int to) {
    int first = Math.min(to, from + (from & 1));
    int last = Math.max(first, to - (to & 1));
    int lowest = lowestOfPairs(codes.pairs(), first >> 1, last >> 1);
    lowest = first > from ? Math.min(lowest, codes.at(from)) : lowest;
    return last < to ? Math.min(lowest, codes.at(last)) : lowest;
  }

  private static int lowestOfPairs(int[] pairs, int from, int to) {
    int early = Short.MAX_VALUE;
    int late = Short.MAX_VALUE;
    for (int i = from; i < to; i++) {
      early = Math.min(early, (pairs[i] << 16) >> 16);
      late = Math.min(late, pairs[i] >> 16);
    }
    return Math.min(early, late);
  }
}
