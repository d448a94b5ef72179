package corewright.measures.wave;

import corewright.measures.Waveform;

/**
 * How a channel answers an edge: extremes until it has settled, and the time until it stays near
 * its new level. Seen through the 20 µs average where the sample rate allows one.
 *
 * @param lowest before settling ends
 * @param highest before settling ends
 * @param lowestAt_s after the edge
 * @param recovery_s from the edge to the sample after the last one outside the band; 0 where it
 *     never left; the longest time seen where it is {@link Recovery#NOT_RECOVERED}
 * @param recoveryU_s standard uncertainty of it: half of what it changes by when the band is
 *     widened and narrowed by the doubt about the level
 */
public record Transient(
    double lowest,
    double highest,
    double lowestAt_s,
    Recovery recovery,
    double recovery_s,
    double recoveryU_s) {

  /** How the answer ended. */
  public enum Recovery {
    RECOVERED("recovered"),
    NEVER_LEFT("never_left"),
    NOT_RECOVERED("not_recovered");

    private final String state;

    Recovery(String state) {
      this.state = state;
    }

    public String state() {
      return state;
    }
  }

  /**
   * @param edge_s middle of the edge, s from the first sample
   * @param settled first sample no longer searched for extremes
   * @param to after the last sample searched for the recovery
   * @param level the new settled level
   * @param band half-width around it
   * @param doubt standard uncertainty of level and samples together
   */
  public static Transient of(
      Waveform wave,
      double sampleRate_Hz,
      double edge_s,
      int settled,
      int to,
      double level,
      double band,
      double doubt) {
    int from = Samples.at(edge_s, sampleRate_Hz);
    double[] x = Smoothing.of(wave, sampleRate_Hz, from, to);
    int lowest = 0;
    int highest = 0;
    for (int i = 1; i < Math.min(settled, to) - from; i++) {
      lowest = x[i] < x[lowest] ? i : lowest;
      highest = x[i] > x[highest] ? i : highest;
    }
    int last = lastOutside(x, level, band);
    Recovery recovery =
        last < 0
            ? Recovery.NEVER_LEFT
            : last == x.length - 1 ? Recovery.NOT_RECOVERED : Recovery.RECOVERED;
    double wider = recovery_s(lastOutside(x, level, band + doubt), from, sampleRate_Hz, edge_s);
    double narrower = recovery_s(lastOutside(x, level, band - doubt), from, sampleRate_Hz, edge_s);
    return new Transient(
        x[lowest],
        x[highest],
        (from + lowest) / sampleRate_Hz - edge_s,
        recovery,
        recovery_s(last, from, sampleRate_Hz, edge_s),
        (narrower - wider) / 2);
  }

  private static int lastOutside(double[] x, double level, double band) {
    int last = x.length - 1;
    while (last >= 0 && Math.abs(x[last] - level) <= band) {
      last--;
    }
    return last;
  }

  private static double recovery_s(int last, int from, double sampleRate_Hz, double edge_s) {
    return last < 0 ? 0 : (from + last + 1) / sampleRate_Hz - edge_s;
  }
}
