package corewright.measures.wave;

import corewright.measures.Waveform;
import java.math.BigInteger;

/**
 * Mean, scatter and extremes of a stretch. Sums are taken on the integer codes and are exact; the
 * only rounding is that of the last division and scaling.
 *
 * @param count samples in the stretch
 * @param mean plain mean of the samples
 * @param rms root of the mean square about {@link #mean}: √(rms² − mean²), divided by n and not n−1
 * @param lowestAt index of the lowest sample, the first of several
 * @param highestAt index of the highest sample, likewise
 * @param peakToPeak highest less lowest raw sample
 */
public record WindowStatistics(
    int count, double mean, double rms, int lowestAt, int highestAt, double peakToPeak) {

  /**
   * @param from first sample
   * @param to after the last sample; at least {@code from + 1}
   */
  public static WindowStatistics of(Waveform wave, int from, int to) {
    Stretch.require(wave, from, to, 1);
    int reference = wave.codeAt(from);
    int lowestAt = from;
    int highestAt = from;
    long sum = 0;
    // (code − reference)² can need 64 bits, so it is summed in halves: d = high·2¹⁶ + low.
    long highHigh = 0;
    long highLow = 0;
    long lowLow = 0;
    for (int i = from; i < to; i++) {
      int code = wave.codeAt(i);
      lowestAt = code < wave.codeAt(lowestAt) ? i : lowestAt;
      highestAt = code > wave.codeAt(highestAt) ? i : highestAt;
      long d = (long) code - reference;
      sum += d;
      long high = d >> 16;
      long low = d & 0xFFFF;
      highHigh += high * high;
      highLow += high * low;
      lowLow += low * low;
    }
    int n = to - from;
    BigInteger squares =
        BigInteger.valueOf(highHigh)
            .shiftLeft(32)
            .add(BigInteger.valueOf(highLow).shiftLeft(17))
            .add(BigInteger.valueOf(lowLow));
    BigInteger total = BigInteger.valueOf(sum);
    double n2Variance =
        squares.multiply(BigInteger.valueOf(n)).subtract(total.multiply(total)).doubleValue();
    double meanCode = reference + (double) sum / n;
    return new WindowStatistics(
        n,
        wave.offset() + wave.lsb() * meanCode,
        wave.lsb() * Math.sqrt(n2Variance) / n,
        lowestAt,
        highestAt,
        wave.lsb() * ((double) wave.codeAt(highestAt) - wave.codeAt(lowestAt)));
  }
}
