package corewright.bench.log.table;

import java.util.Arrays;

/** Numbers that mean there is none: all bits set in one or two bytes, scaled or not, and zero. */
final class NoData {
  private static final double[] CODES = {
    255, 65535, 65534, 127.5, 25.5, 12.75, 6553.5, 655.35, 65.535, 1023, 102.3, 4095, 409.5, 32767,
    327.67, -32768, 999, 9999, 999.9, 99.9, 99.99, -1, -40, 6.5535, 2.55, 16383.75, 3276.7, 8191,
    819.1, 8191.875, 127, 88.8, 888.8, 99999, 511, 2047, 16383
  };

  /** No voltage is printed as so large a number, in whatever unit; all bits of four bytes are. */
  private static final double TOO_LARGE = 1e8;

  /** A channel that is near a code's number may well measure it. */
  private static final double NEAR = 0.3;

  /** Codes that an engine could turn at. */
  private static final double[] SPEEDS = {255, 511, 999, 1023, 2047, 4095, 4095.75};

  /** How near to a code an engine would turn as well, if it turned at it; as a share. */
  private static final double ABOUT = 0.08;

  private NoData() {}

  /**
   * Codes for no engine speed that this column uses, ascending: an engine that really turns at 255
   * a minute turns at 251 and 258 too, so a number that stands alone is none.
   */
  static double[] ofSpeed(ColumnFacts facts) {
    return Arrays.stream(SPEEDS).filter(code -> standsAlone(facts.sorted(), code)).toArray();
  }

  private static boolean standsAlone(double[] values, double code) {
    long exactly = Arrays.stream(values).filter(v -> v == code).count();
    long about = Arrays.stream(values).filter(v -> Math.abs(v - code) < ABOUT * code).count();
    return exactly >= 1 && 2 * exactly > about;
  }

  /**
   * Whether a printed voltage is none. Zero is: a module without supply cannot report it.
   *
   * @param typical of the channel, as printed
   */
  static boolean is(double printed, double typical) {
    if (printed == 0 || Math.abs(printed) >= TOO_LARGE) {
      return true;
    }
    boolean code = Arrays.stream(CODES).anyMatch(c -> Math.abs(c - printed) < 1e-9 * Math.abs(c));
    return code && Math.abs(printed - typical) > NEAR * Math.abs(typical);
  }
}
