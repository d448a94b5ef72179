package corewright.measures.wave;

import corewright.measures.Waveform;
import java.util.Arrays;
import java.util.BitSet;

/**
 * The step in which a channel really moves: the smallest distance between two values that occur. A
 * file may print four decimals of a converter whose step is 20 mV; its codes are then tenths of a
 * millivolt, and {@link Waveform#lsb} says nothing about what the instrument could resolve.
 *
 * @param step in the waveform's unit, at least one code
 */
public record Resolution(double step) {
  private static final int WIDEST_SET = 1 << 26;

  public static Resolution of(Waveform wave) {
    return new Resolution(wave.lsb() * smallestGap(wave));
  }

  private static long smallestGap(Waveform wave) {
    if (wave.size() == 0) {
      return 1;
    }
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (int i = 0; i < wave.size(); i++) {
      low = Math.min(low, wave.codeAt(i));
      high = Math.max(high, wave.codeAt(i));
    }
    return (long) high - low < WIDEST_SET ? gapInSet(wave, low) : gapInSorted(wave);
  }

  private static long gapInSet(Waveform wave, int low) {
    BitSet seen = new BitSet();
    for (int i = 0; i < wave.size(); i++) {
      seen.set(wave.codeAt(i) - low);
    }
    int gap = Integer.MAX_VALUE;
    int previous = 0; // the lowest code
    for (int code = seen.nextSetBit(1); code > 0; code = seen.nextSetBit(code + 1)) {
      gap = Math.min(gap, code - previous);
      previous = code;
    }
    return gap == Integer.MAX_VALUE ? 1 : gap;
  }

  private static long gapInSorted(Waveform wave) {
    int[] codes = new int[wave.size()];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = wave.codeAt(i);
    }
    Arrays.sort(codes);
    long gap = Long.MAX_VALUE;
    for (int i = 1; i < codes.length; i++) {
      long distance = (long) codes[i] - codes[i - 1];
      if (distance > 0) {
        gap = Math.min(gap, distance);
      }
    }
    return gap == Long.MAX_VALUE ? 1 : gap;
  }

  /** Standard uncertainty of one rounded value: step/√12 (JCGM 100, F.2.2.1). */
  public double ofOne() {
    return step / Math.sqrt(12);
  }

  /**
   * Standard uncertainty that rounding leaves in a mean. A quiet signal is rounded the same way
   * each time, and averaging does not help; noise or a trend of more than a step spreads the
   * rounding out. Gaussian noise of standard deviation σ leaves exp(−2π²σ²/step²) of it, a trend
   * across m steps about 1/(πm).
   *
   * @param sd scatter about the trend, rounding included
   * @param span rise of the trend over the stretch
   * @see "Widrow and Kollár, Quantization Noise (2008), chapter 6: the first harmonic of the
   *     characteristic function (from memory)"
   */
  public double ofMean(double sd, double span, int count) {
    double noise = Math.sqrt(Math.max(0, sd * sd - step * step / 12)) / step;
    double byNoise = Math.exp(-2 * Math.PI * Math.PI * noise * noise);
    double bySpan = 1 / Math.max(1, Math.PI * Math.abs(span) / step);
    return ofOne() * Math.max(Math.min(byNoise, bySpan), 1 / Math.sqrt(count));
  }
}
