package corewright.measures.code;

/**
 * How a channel answers a load edge, in codes and samples.
 *
 * @param lowest code before settling ends
 * @param recovery samples from the edge to the one after the last outside the band; 0 where none is
 */
public record EdgeAnswer(int lowest, int recovery) {

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
    boolean steady = about.holds(window.lowest()) && about.holds(window.highest());
    int last = about.lastOutside(codes, edge, steady ? settled : to);
    return new EdgeAnswer(lowest(codes, edge, settled), last < 0 ? 0 : last + 1 - edge);
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
