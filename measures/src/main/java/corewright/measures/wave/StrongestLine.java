package corewright.measures.wave;

import corewright.measures.Waveform;
import java.util.Optional;

/**
 * The strongest sinusoidal line of a stretch within a band: straight line taken out, Hann window
 * over the whole stretch, largest bin, two-bin interpolation that is exact for a single line.
 *
 * @param frequency_Hz of the line; above half the sample rate it appears folded
 * @param amplitude peak value of the sine
 * @param floor rms of what remains besides the line: noise, harmonics, other lines; or of the white
 *     noise that would be as strong everywhere as the noise beside the line, where that is more
 * @param duration_s of the stretch
 * @param count samples in the stretch
 */
public record StrongestLine(
    double frequency_Hz, double amplitude, double floor, double duration_s, int count) {

  /** Lines closer to zero than this many bins cannot be told from a bent trend. */
  private static final double LOWEST_BIN = 2.5;

  private static final double FALSE_LINES = 1e-4;

  /** Independent bins among those beside a line: a Hann window makes about two of five alike. */
  private static final int BESIDE = 18;

  /**
   * @param low_Hz lower end of the band
   * @param high_Hz upper end; the band ends at half the sample rate in any case
   * @return empty where the stretch holds no bin of the band
   */
  public static Optional<StrongestLine> find(
      Waveform wave, double sampleRate_Hz, int from, int to, double low_Hz, double high_Hz) {
    Stretch.require(wave, from, to, 2);
    int n = to - from;
    double perBin = sampleRate_Hz / n;
    int low = (int) Math.ceil(Math.max(low_Hz / perBin, LOWEST_BIN) - 1e-9);
    int high = (int) Math.floor(Math.min(high_Hz / perBin, (n - 1) / 2.0 - 1) + 1e-9);
    if (high < low) {
      return Optional.empty();
    }
    double[] windowed = hann(wave, from, to);
    Bins bins = new Bins(windowed);
    int peak = bins.strongest(low, high);
    double here = bins.magnitude(peak);
    double below = bins.magnitude(peak - 1);
    double above = bins.magnitude(peak + 1);
    double ratio = here == 0 ? 0 : Math.max(below, above) / here;
    double shift = (2 * ratio - 1) / (ratio + 1);
    double amplitude = 4 * here / n / lobe(shift);
    double frequency = perBin * (above >= below ? peak + shift : peak - shift);
    // Σ(hann·x)² is 3/8 of Σx²: what the line does not account for is the floor.
    double squares = 0;
    for (double x : windowed) {
      squares += x * x;
    }
    double all = squares / n * 8 / 3;
    double rest = Math.sqrt(Math.max(0, all - amplitude * amplitude / 2));
    double beside = whiteRms(bins.floorBeside(peak), n);
    return Optional.of(
        new StrongestLine(frequency, amplitude, Math.max(rest, beside), n / sampleRate_Hz, n));
  }

  private static double[] hann(Waveform wave, int from, int to) {
    LinearTrend trend = LinearTrend.of(wave, from, to);
    int n = to - from;
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = hann(i, n) * (wave.at(from + i) - trend.at(from + i));
    }
    return x;
  }

  /** Weight of sample {@code i} of {@code n}. */
  static double hann(int i, int n) {
    return 0.5 - 0.5 * Math.cos(2 * Math.PI * i / n);
  }

  /** Rms of the white noise whose Hann bins have that scale. */
  static double whiteRms(double scale, int n) {
    return 4 * scale / n * Math.sqrt(n / 3.0);
  }

  /** Hann's main lobe, 1 at its middle: sinc(d)/(1 − d²). */
  private static double lobe(double d) {
    if (Math.abs(d) < 1e-9) {
      return 1;
    }
    return Math.sin(Math.PI * d) / (Math.PI * d) / (1 - d * d);
  }

  /**
   * Standard uncertainty of {@link #frequency_Hz}: the bound of Cramér and Rao for a sine in white
   * noise of rms {@link #floor}, times 1.75 for what window and interpolation throw away (found by
   * simulation: the coverage study).
   *
   * @see "Kay, Fundamentals of Statistical Signal Processing (1993), example 3.14 (from memory)"
   */
  public double frequencyU_Hz() {
    double noise = floor / amplitude;
    return 1.75 * Math.sqrt(6.0 / count) * noise / (Math.PI * duration_s);
  }

  /**
   * Whether noise of rms {@link #floor} alone would hold such a line in less than one of 10,000
   * stretches: in noise a bin's power has an exponential distribution, there are n/2 bins, and the
   * mean power beside it is itself known from {@link #BESIDE} independent bins alone, so that the
   * ratio has the tail (1 + x/m)⁻ᵐ. Where the spectrum of the noise falls steeply beside its peak
   * it is one of a hundred.
   */
  public boolean standsOut() {
    double one = FALSE_LINES / (count / 2.0);
    double ratio = BESIDE * (Math.pow(one, -1.0 / BESIDE) - 1);
    return amplitude > amplitudeU() * Math.sqrt(2 * ratio);
  }

  /** Standard uncertainty of {@link #amplitude} from the floor: floor·√(2·1.5/n). */
  public double amplitudeU() {
    return floor * Math.sqrt(3.0 / count);
  }
}
