package corewright.measures.wave;

import corewright.measures.Waveform;

/**
 * How a channel answers an edge: extremes until it has settled, and the time until it stays near
 * its new level. Seen through the 20 µs average where the sample rate allows one.
 *
 * @param lowest before settling ends
 * @param lowestU half-width of its 95 % interval from noise
 * @param highest before settling ends
 * @param highestU half-width of its 95 % interval from noise
 * @param lowestAt_s after the edge
 * @param lowestAtU_s its standard uncertainty: anywhere on the bottom that noise makes level
 * @param recovery_s from the edge to the sample after the last one outside the band; 0 where it
 *     never left; the longest time seen where it is {@link Recovery#NOT_RECOVERED}
 * @param recoveryU_s half-width of its 95 % interval: noise keeps a slow return outside for longer
 */
public record Transient(
    double lowest,
    double lowestU,
    double highest,
    double highestU,
    double lowestAt_s,
    double lowestAtU_s,
    Recovery recovery,
    double recovery_s,
    double recoveryU_s) {

  /**
   * Width of the bottom over its standard uncertainty: where the bottom lies and which of its
   * samples is the lowest add up to a trapezoid, here with a top half as wide as its base (JCGM
   * 100, 4.3.9 with β = ½).
   */
  private static final double TRAPEZOID = Math.sqrt(24 / 1.25);

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
   * What the new level is known to be.
   *
   * @param level the settled level
   * @param u its standard uncertainty
   * @param noise standard deviation of the samples about it, seen through the same average
   * @param correlated how many neighbouring samples of the noise are worth one
   * @param band half-width of the recovery band
   */
  public record Settled(double level, double u, double noise, double correlated, double band) {}

  /**
   * @param edge_s middle of the edge, s from the first sample
   * @param settledAt first sample no longer searched for extremes
   * @param to after the last sample searched for the recovery
   */
  public static Transient of(
      Waveform wave, double sampleRate_Hz, double edge_s, int settledAt, int to, Settled settled) {
    int from = Samples.at(edge_s, sampleRate_Hz);
    double[] x = Smoothing.of(wave, sampleRate_Hz, from, to);
    int count = Math.max(1, Math.min(settledAt, to) - from);
    int lowest = 0;
    int highest = 0;
    for (int i = 1; i < count; i++) {
      lowest = x[i] < x[lowest] ? i : lowest;
      highest = x[i] > x[highest] ? i : highest;
    }
    BandReturn back = new BandReturn(x, settled, from / sampleRate_Hz - edge_s, sampleRate_Hz);
    return new Transient(
        x[lowest],
        noise(x, count, settled, 1),
        x[highest],
        noise(x, count, settled, -1),
        (from + lowest) / sampleRate_Hz - edge_s,
        bottom(x, count, lowest, settled) / TRAPEZOID / sampleRate_Hz,
        back.state(),
        back.after_s(settled.band()),
        back.halfWidth_s());
  }

  /** Samples from the first to the last that noise could have made the lowest. */
  private static int bottom(double[] x, int count, int lowest, Settled settled) {
    double noise = settled.noise();
    double correlated = settled.correlated();
    int sharing = NoisyExtreme.sharing(i -> x[i], count, noise, correlated, 1);
    double bound = x[lowest] + NoisyExtreme.reach(noise, sharing, correlated);
    int first = lowest;
    int last = lowest;
    for (int i = 0; i < count; i++) {
      if (x[i] <= bound) {
        first = Math.min(first, i);
        last = Math.max(last, i);
      }
    }
    return last - first + 1;
  }

  private static double noise(double[] x, int count, Settled settled, int sign) {
    double correlated = settled.correlated();
    int sharing = NoisyExtreme.sharing(i -> x[i], count, settled.noise(), correlated, sign);
    return NoisyExtreme.halfWidth(settled.noise(), sharing, correlated);
  }
}
