package corewright.measures.wave;

import corewright.measures.Waveform;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * The step in which a channel really moves: the smallest distance between two values that occur. A
 * file may print four decimals of a converter whose step is 20 mV; its codes are then tenths of a
 * millivolt, and {@link Waveform#lsb} says nothing about what the instrument could resolve.
 *
 * @param step in the waveform's unit, at least one code
 */
public record Resolution(double step) {
  private static final int WIDEST_SET = 1 << 26;

  /** The smallest step of several stretches; one code where none shows any. */
  public static Resolution smallest(List<Resolution> several, Waveform wave) {
    double least =
        several.stream().mapToDouble(Resolution::step).min().orElse(Double.POSITIVE_INFINITY);
    return new Resolution(least < Double.POSITIVE_INFINITY ? least : wave.lsb());
  }

  /**
   * The smallest distance between two values of a stretch; empty where only one value occurs. The
   * stretch should hold one level: from one level to the next a quiet channel may well move by many
   * of its steps at once.
   */
  public static Optional<Resolution> of(Waveform wave, int from, int to) {
    Stretch.require(wave, from, to, 1);
    int low = wave.codeAt(from);
    int high = low;
    for (int i = from; i < to; i++) {
      low = Math.min(low, wave.codeAt(i));
      high = Math.max(high, wave.codeAt(i));
    }
    if (low == high) {
      return Optional.empty();
    }
    long gap =
        (long) high - low < WIDEST_SET
            ? gapInSet(wave, from, to, low)
            : gapInSorted(wave, from, to);
    return Optional.of(new Resolution(wave.lsb() * gap));
  }

  private static long gapInSet(Waveform wave, int from, int to, int low) {
    BitSet seen = new BitSet();
    for (int i = from; i < to; i++) {
      seen.set(wave.codeAt(i) - low);
    }
    int gap = Integer.MAX_VALUE;
    int previous = 0; // the lowest code
    for (int code = seen.nextSetBit(1); code > 0; code = seen.nextSetBit(code + 1)) {
      gap = Math.min(gap, code - previous);
      previous = code;
    }
    return gap;
  }

  private static long gapInSorted(Waveform wave, int from, int to) {
    int[] codes = new int[to - from];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = wave.codeAt(from + i);
    }
    Arrays.sort(codes);
    long gap = Long.MAX_VALUE;
    for (int i = 1; i < codes.length; i++) {
      long distance = (long) codes[i] - codes[i - 1];
      if (distance > 0) {
        gap = Math.min(gap, distance);
      }
    }
    return gap;
  }

  /** Standard uncertainty of one rounded value: step/√12 (JCGM 100, F.2.2.1). */
  public double ofOne() {
    return step / Math.sqrt(12);
  }

  /** Standard uncertainty that rounding leaves in a mean: {@link #left} of that of one value. */
  public double ofMean(double sd, double span, int count) {
    return ofOne() * left(sd, span, count);
  }

  /**
   * How much of the rounding is left when many values are averaged, 0 to 1. A quiet signal is
   * rounded the same way each time, and averaging does not help; noise or a trend of more than a
   * step spreads the rounding out. Gaussian noise of standard deviation σ leaves exp(−2π²σ²/step²)
   * of it, a trend across m steps about 1/(πm).
   *
   * @param sd scatter about the trend, rounding included
   * @param span rise of the trend over the stretch
   * @see "Widrow and Kollár, Quantization Noise (2008), chapter 6: the first harmonic of the
   *     characteristic function (from memory)"
   */
  public double left(double sd, double span, int count) {
    double noise = Math.sqrt(Math.max(0, sd * sd - step * step / 12)) / step;
    double byNoise = Math.exp(-2 * Math.PI * Math.PI * noise * noise);
    double bySpan = 1 / Math.max(1, Math.PI * Math.abs(span) / step);
    return Math.max(Math.min(byNoise, bySpan), 1 / Math.sqrt(count));
  }
}
