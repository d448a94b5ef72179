package corewright.measures.code;

import java.math.BigInteger;

/**
 * What a stretch of codes comes to; all exact.
 *
 * @param count codes, at least one
 * @param sum of the codes
 * @param squares sum of their squares
 * @param lowerMiddle the median, where the count is even the lower of the two middle codes
 * @param upperMiddle the median, where the count is even the upper one
 */
public record CodeStatistics(
    int count, long sum, long squares, int lowest, int highest, int lowerMiddle, int upperMiddle) {

  /** Mean code, rounded once. */
  public double mean() {
    return (double) sum / count;
  }

  /** Median code, generally a half where the count is even. */
  public double median() {
    return (lowerMiddle + upperMiddle) / 2.0;
  }

  /** Root of the mean square about the mean, divided by n and not n−1. */
  public double rms() {
    BigInteger n = BigInteger.valueOf(count);
    BigInteger total = BigInteger.valueOf(sum);
    BigInteger n2Variance = BigInteger.valueOf(squares).multiply(n).subtract(total.multiply(total));
    return Math.sqrt(n2Variance.doubleValue()) / count;
  }

  public int peakToPeak() {
    return highest - lowest;
  }
}
