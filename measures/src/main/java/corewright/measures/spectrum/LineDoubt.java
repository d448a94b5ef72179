package corewright.measures.spectrum;

import java.util.Arrays;

/**
 * What noise leaves open of the amplitude of a line, or of several together. A bin with a line of
 * amplitude a holds a² + 2s² on the average, with s the deviation of either of its two components,
 * and its power scatters by 2s·√(a² + s²); so its root is never 0 where there is no line at all.
 *
 * @param u half of the half-width of a 95 % interval about the amplitude as it is read
 * @see "Papoulis, Probability, Random Variables and Stochastic Processes, 6-2: Rice and Rayleigh
 *     (from memory)"
 */
public record LineDoubt(double u) {
  private static final double K = 2;

  /** A line reaches this many bins to either side, and so far the noise beside it is looked at. */
  private static final int FARTHEST = 40;

  /** So many bins show the noise about as well as 18 degrees of freedom: Student's t over 2. */
  private static final double FEW_BINS = 1.05;

  /** HFT90D is flat to 0.0039 dB. */
  private static final double FLAT = 0.00045;

  /**
   * @param amplitude as read: the root of the sum of the squares of all
   * @param lines how many together
   * @param noise deviation s of one component of a bin
   * @param averages independent spectra that the power is the mean of
   */
  public static LineDoubt of(double amplitude, int lines, double noise, double averages) {
    double own = lines * noise * noise;
    double power = Math.max(0, amplitude * amplitude - 2 * own);
    double reach = K * FEW_BINS * noise / Math.sqrt(averages);
    // a² ± 2·2s·√(a² + s²)/√m = what was read less its noise, solved for a at either end.
    double middle = Math.sqrt(reach * reach + power + own);
    double least = Math.max(0, middle - reach);
    double least2 = Math.max(0, least * least - own);
    double most2 = Math.max(0, (middle + reach) * (middle + reach) - own);
    double half = Math.max(amplitude - Math.sqrt(least2), Math.sqrt(most2) - amplitude);
    return new LineDoubt(Math.hypot(half / K, FLAT / Math.sqrt(3) * amplitude));
  }

  /** Deviation of one component of a bin from the noise beside it, by the median of the bins. */
  static double noiseBeside(Spectrum spectrum, double at_Hz) {
    int nearest = (int) Math.ceil(spectrum.window().lobe()) + 1;
    int bin = (int) Math.round(at_Hz / spectrum.binWidth_Hz());
    double[] powers = new double[2 * (FARTHEST - nearest + 1)];
    int count = 0;
    for (int away = nearest; away <= FARTHEST; away++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        int k = bin + sign * away;
        if (k >= nearest && k < spectrum.size()) {
          powers[count++] = spectrum.amplitude(k) * spectrum.amplitude(k);
        }
      }
    }
    if (count == 0) {
      return 0;
    }
    Arrays.sort(powers, 0, count);
    // Median of a chi-square with 2m degrees of freedom over m: 2·(1 − 1/(9m))³.
    double few = Math.pow(1 - 1 / (9.0 * spectrum.segments()), 3);
    return Math.sqrt(powers[count / 2] / (2 * few));
  }
}
