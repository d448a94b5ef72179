package corewright.measures.spectrum;

import corewright.measures.wave.Fft;

/**
 * Calibrated spectrum of a record, averaged over half-overlapping segments (Welch), the mean of
 * each segment taken out.
 *
 * <p>The same numbers answer two questions: {@link #amplitude} for lines, {@link #density} for
 * noise. Each is right only for its own; a window is chosen accordingly.
 *
 * @see "Heinzel, Rüdiger and Schilling (2002), section 9, equations 23 and 24; Welch, IEEE Trans.
 *     Audio 15 (1967) 70"
 */
public final class Spectrum {
  private final double[] power; // mean |X|², bins 0 … n/2
  private final int n;
  private final double sampleRate_Hz;
  private final Window window;
  private final int segments;
  private final double sum;
  private final double sumOfSquares;

  private Spectrum(
      double[] power, double[] samples, double sampleRate_Hz, Window window, int segments) {
    this.power = power;
    this.n = samples.length;
    this.sampleRate_Hz = sampleRate_Hz;
    this.window = window;
    this.segments = segments;
    double total = 0;
    double squares = 0;
    for (double sample : samples) {
      total += sample;
      squares += sample * sample;
    }
    sum = total;
    sumOfSquares = squares;
  }

  /**
   * @param segment samples in each segment, a power of two, at most the record's length
   */
  public static Spectrum of(double[] x, double sampleRate_Hz, Window window, int segment) {
    if (segment < 8 || Integer.bitCount(segment) != 1 || segment > x.length) {
      throw new IllegalArgumentException(
          "a segment is a power of two from 8 to the "
              + x.length
              + " samples of the record, not "
              + segment);
    }
    double[] w = window.samples(segment);
    Fft fft = new Fft(segment);
    double[] power = new double[segment / 2 + 1];
    int segments = 0;
    for (int from = 0; from + segment <= x.length; from += segment / 2) {
      add(power, fft, w, x, from);
      segments++;
    }
    for (int k = 0; k < power.length; k++) {
      power[k] /= segments;
    }
    return new Spectrum(power, w, sampleRate_Hz, window, segments);
  }

  /**
   * A spectrum whose segments were transformed elsewhere.
   *
   * @param power mean over the segments of |X|² of their windowed samples, bins 0 … n/2
   */
  public static Spectrum ofPowers(
      double[] power, double sampleRate_Hz, Window window, int segments) {
    if (segments < 1) {
      throw new IllegalArgumentException("the record is shorter than one segment");
    }
    double[] w = window.samples(2 * (power.length - 1));
    return new Spectrum(power.clone(), w, sampleRate_Hz, window, segments);
  }

  private static void add(double[] power, Fft fft, double[] w, double[] x, int from) {
    double mean = 0;
    for (int i = 0; i < w.length; i++) {
      mean += x[from + i] / w.length;
    }
    double[] re = new double[w.length];
    double[] im = new double[w.length];
    for (int i = 0; i < w.length; i++) {
      re[i] = w[i] * (x[from + i] - mean);
    }
    fft.transform(re, im);
    for (int k = 0; k < power.length; k++) {
      power[k] += re[k] * re[k] + im[k] * im[k];
    }
  }

  /** Bins from 0 to half the sample rate, both included. */
  public int size() {
    return power.length;
  }

  public double binWidth_Hz() {
    return sampleRate_Hz / n;
  }

  public double frequency_Hz(int bin) {
    return bin * binWidth_Hz();
  }

  public double sampleRate_Hz() {
    return sampleRate_Hz;
  }

  public Window window() {
    return window;
  }

  /** Segments averaged; half-overlapping ones are not quite independent. */
  public int segments() {
    return segments;
  }

  /** Peak amplitude of a sine on this bin. */
  public double amplitude(int bin) {
    return Math.sqrt(sides(bin) * sides(bin) * power[bin]) / sum;
  }

  /** Density of noise, rms per √Hz, one-sided. */
  public double density(int bin) {
    return Math.sqrt(sides(bin) * power[bin] / (sampleRate_Hz * sumOfSquares));
  }

  /** Rms of everything from one frequency to another, by the densities of the bins between. */
  public double rms(double from_Hz, double to_Hz) {
    double sumOfPower = 0;
    for (int k = 0; k < power.length; k++) {
      if (frequency_Hz(k) >= from_Hz && frequency_Hz(k) <= to_Hz) {
        sumOfPower += density(k) * density(k) * binWidth_Hz();
      }
    }
    return Math.sqrt(sumOfPower);
  }

  /** A sine at 0 or at half the rate has one line and no mirror. */
  private int sides(int bin) {
    return bin == 0 || bin == n / 2 ? 1 : 2;
  }
}
