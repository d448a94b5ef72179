package corewright.bench.wire;

/** Values as codes of 16 bit, which is what a capture keeps. */
final class Quantized {
  /** SCPI-1999, 7.2.1.4: what stands for infinity. */
  private static final double INFINITY = 9.9e37;

  private Quantized() {}

  /** The code of a value; a rail where it is beyond the range. */
  static short code(double value, double lsb) {
    if (Math.abs(value) >= INFINITY) {
      return value > 0 ? Short.MAX_VALUE : Short.MIN_VALUE;
    }
    return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.rint(value / lsb)));
  }
}
