package corewright.measures.wave;

import corewright.measures.Waveform;

/**
 * The low-pass of one pole, 1/(1 + jf/b), on samples: the pole of the analogue filter, exactly, and
 * five symmetric weights that give it the analogue gain at 0, near 0 and at a third of the sample
 * rate. Its gain is right to 0.6 % up to there and 17 % too large at half the rate, which of white
 * noise leaves 0.5 % too much at the most; it delays by half a sample more.
 */
public final class OnePoleFilter {
  /** Of sin² πf at a third of the sample rate. */
  private static final double THIRD = 0.75;

  private final double keep;
  private final double middle;
  private final double next;
  private final double far;

  /**
   * @param bandwidth the −3 dB point over the sample rate, above 0 and below a quarter
   */
  public OnePoleFilter(double bandwidth) {
    keep = Math.exp(-2 * Math.PI * bandwidth);
    double free = 1 - keep;
    // Weights 1 + α·s² + β·s⁴ with s = sin πf: the pole's square is (1 − k)² + 4k·s².
    double pole = 4 * keep / (free * free);
    double alpha = (pole - 1 / Math.pow(Math.PI * bandwidth, 2)) / 2;
    double third = Math.sqrt((1 + THIRD * pole) / (1 + Math.pow(1 / (3 * bandwidth), 2)));
    double beta = (third - 1 - THIRD * alpha) / (THIRD * THIRD);
    // s² is a second difference over −4, s⁴ a fourth over 16.
    middle = free * (1 + alpha / 2 + 6 * beta / 16);
    next = free * (-alpha / 4 - 4 * beta / 16);
    far = free * beta / 16;
  }

  /** Samples {@code [from, to)} of what comes out, from {@code start} on as if at rest before. */
  public double[] of(Waveform wave, int start, int from, int to) {
    double[] out = new double[to - from];
    double level = wave.at(start);
    double y = 0;
    for (int i = start; i < to; i++) {
      double now = middle * (wave.at(i) - level);
      now += next * (at(wave, i - 1, start) + at(wave, i + 1, start) - 2 * level);
      now += far * (at(wave, i - 2, start) + at(wave, i + 2, start) - 2 * level);
      y = keep * y + now;
      if (i >= from) {
        out[i - from] = level + y;
      }
    }
    return out;
  }

  private static double at(Waveform wave, int i, int start) {
    return wave.at(Math.max(start, Math.min(wave.size() - 1, i)));
  }
}
