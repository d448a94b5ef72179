package corewright.measures.wave;

import corewright.measures.Waveform;

/**
 * Centred moving average for transients: the exact integral of the samples joined by straight
 * lines, so that a width between two samples is honoured.
 */
public final class Smoothing {
  /** Width of the average that takes switching ripple out of a transient, s. */
  public static final double WIDTH_S = 20e-6;

  private Smoothing() {}

  /**
   * Whether the sample rate gives the average at least two samples; if not, samples stand as read.
   */
  public static boolean applies(double sampleRate_Hz) {
    return WIDTH_S * sampleRate_Hz >= 2 - 1e-9;
  }

  /**
   * Samples {@code [from, to)}, averaged over {@link #WIDTH_S} where that {@link #applies}. At the
   * ends of the record the average is taken over what there is.
   */
  public static double[] of(Waveform wave, double sampleRate_Hz, int from, int to) {
    return over(wave, from, to, applies(sampleRate_Hz) ? WIDTH_S * sampleRate_Hz : 0);
  }

  /**
   * Samples {@code [from, to)} averaged over any width.
   *
   * @param width samples, with its fraction; 0 leaves them as read
   */
  public static double[] over(Waveform wave, int from, int to, double width) {
    Stretch.require(wave, from, to, 0);
    double[] smooth = new double[to - from];
    if (width == 0) {
      for (int i = from; i < to; i++) {
        smooth[i - from] = wave.at(i);
      }
      return smooth;
    }
    double half = width / 2;
    Integral integral =
        Integral.of(
            wave,
            Math.max(0, (int) Math.floor(from - half)),
            Math.min(wave.size(), (int) Math.ceil(to + half) + 1));
    double last = wave.size() - 1.0;
    for (int i = from; i < to; i++) {
      double left = Math.max(0, i - half);
      double right = Math.min(last, i + half);
      smooth[i - from] = (integral.to(right) - integral.to(left)) / (right - left);
    }
    return smooth;
  }

  /** Running integral, in samples, of the polygon through the samples, about the first of them. */
  private static final class Integral {
    private final Waveform wave;
    private final int from;
    private final double base;
    private final double[] sums;

    private Integral(Waveform wave, int from, double base, double[] sums) {
      this.wave = wave;
      this.from = from;
      this.base = base;
      this.sums = sums;
    }

    static Integral of(Waveform wave, int from, int to) {
      double base = wave.at(from);
      double[] sums = new double[to - from];
      for (int i = 1; i < sums.length; i++) {
        double trapezoid = (wave.at(from + i - 1) - base + wave.at(from + i) - base) / 2;
        sums[i] = sums[i - 1] + trapezoid;
      }
      return new Integral(wave, from, base, sums);
    }

    double to(double index) {
      int whole = (int) index;
      double part = index - whole;
      double left = wave.at(whole) - base;
      double fraction = 0;
      if (part > 0) {
        double right = wave.at(whole + 1) - base;
        fraction = part * left + part * part / 2 * (right - left);
      }
      return sums[whole - from] + fraction + base * (index - from);
    }
  }
}
