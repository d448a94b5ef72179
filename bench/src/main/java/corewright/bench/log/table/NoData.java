package corewright.bench.log.table;

import java.util.Arrays;

/** Numbers that mean there is none: all bits set in one or two bytes, scaled or not, and zero. */
final class NoData {
  private static final double[] CODES = {
    255, 65535, 65534, 127.5, 25.5, 12.75, 6553.5, 655.35, 65.535, 1023, 102.3, 4095, 409.5, 32767,
    327.67, -32768, 999, 9999, 999.9, 99.9, 99.99, -1, -40, 6.5535, 2.55, 16383.75
  };

  /** A channel that is near a code's number may well measure it. */
  private static final double NEAR = 0.3;

  private NoData() {}

  /**
   * Whether a printed voltage is none. Zero is: a module without supply cannot report it.
   *
   * @param typical of the channel, as printed
   */
  static boolean is(double printed, double typical) {
    if (printed == 0) {
      return true;
    }
    boolean code = Arrays.stream(CODES).anyMatch(c -> Math.abs(c - printed) < 1e-9 * Math.abs(c));
    return code && Math.abs(printed - typical) > NEAR * Math.abs(typical);
  }
}
