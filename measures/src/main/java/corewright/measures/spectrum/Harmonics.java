package corewright.measures.spectrum;

import java.util.OptionalDouble;

/**
 * Amplitudes at a fundamental, its multiples and its half. Above half the sample rate a line
 * appears folded; it is looked for there.
 */
public final class Harmonics {
  private final Spectrum spectrum;
  private final double fundamental_Hz;

  /**
   * @param spectrum with a flat-top window
   * @param fundamental_Hz above 0
   */
  public Harmonics(Spectrum spectrum, double fundamental_Hz) {
    if (!(fundamental_Hz > 0)) {
      throw new IllegalArgumentException("the fundamental is not above 0: " + fundamental_Hz);
    }
    this.spectrum = spectrum;
    this.fundamental_Hz = fundamental_Hz;
  }

  /**
   * Peak amplitude of a line at {@code order} times the fundamental; empty where it runs into the
   * mean or, folded, into another line of the same comb.
   *
   * @param order 1 for the fundamental, 2, 3 … for harmonics, 0.5 for the sub-harmonic
   */
  public OptionalDouble amplitude(double order) {
    double at = apparent_Hz(order);
    double apart = spectrum.window().lobe() * spectrum.binWidth_Hz();
    if (at < apart) {
      return OptionalDouble.empty();
    }
    for (int other = 1; other <= Math.ceil(order) + 1; other++) {
      if (other != order && Math.abs(apparent_Hz(other) - at) < 2 * apart) {
        return OptionalDouble.empty();
      }
    }
    return OptionalDouble.of(spectrum.amplitude((int) Math.round(at / spectrum.binWidth_Hz())));
  }

  /**
   * Standard uncertainty that noise leaves in {@link #amplitude}: from the noise beside that line.
   */
  public double u(double order) {
    double noise = LineDoubt.noiseBeside(spectrum, apparent_Hz(order));
    double read = amplitude(order).orElse(0);
    return LineDoubt.of(read, 1, noise, spectrum.segments()).u();
  }

  /** Where a line of that order appears: itself below half the rate, folded above. */
  public double apparent_Hz(double order) {
    double rate = spectrum.sampleRate_Hz();
    double within = order * fundamental_Hz % rate;
    return Math.min(within, rate - within);
  }

  /**
   * Total harmonic distortion, harmonics 2 to {@code highest} over the fundamental, those that can
   * be told apart; empty if the fundamental cannot.
   */
  public OptionalDouble distortion(int highest) {
    OptionalDouble one = amplitude(1);
    if (one.isEmpty()) {
      return one;
    }
    double squares = 0;
    for (int order = 2; order <= highest; order++) {
      double a = amplitude(order).orElse(0);
      squares += a * a;
    }
    return OptionalDouble.of(Math.sqrt(squares) / one.getAsDouble());
  }

  /** Standard uncertainty that noise leaves in {@link #distortion}; 0 where that is empty. */
  public double uDistortion(int highest) {
    OptionalDouble one = amplitude(1);
    if (one.isEmpty()) {
      return 0;
    }
    double noise2 = 0;
    int lines = 0;
    for (int order = 2; order <= highest; order++) {
      if (amplitude(order).isPresent()) {
        double noise = LineDoubt.noiseBeside(spectrum, apparent_Hz(order));
        noise2 += noise * noise;
        lines++;
      }
    }
    double part = distortion(highest).orElse(0);
    double read = part * one.getAsDouble();
    double mean = lines == 0 ? 0 : Math.sqrt(noise2 / lines);
    double u = LineDoubt.of(read, lines, mean, spectrum.segments()).u();
    return Math.hypot(u, part * u(1)) / one.getAsDouble();
  }

  /** Standard uncertainty that noise leaves in {@link #subharmonicRatio}; 0 where that is empty. */
  public double uSubharmonicRatio() {
    OptionalDouble ratio = subharmonicRatio();
    return ratio.isEmpty()
        ? 0
        : Math.hypot(u(0.5), ratio.getAsDouble() * u(1)) / amplitude(1).orElseThrow();
  }

  /**
   * Amplitude at half the fundamental over that at the fundamental. A converter whose every second
   * cycle differs shows it; empty where either cannot be told apart.
   */
  public OptionalDouble subharmonicRatio() {
    OptionalDouble half = amplitude(0.5);
    OptionalDouble one = amplitude(1);
    return half.isPresent() && one.isPresent()
        ? OptionalDouble.of(half.getAsDouble() / one.getAsDouble())
        : OptionalDouble.empty();
  }
}
