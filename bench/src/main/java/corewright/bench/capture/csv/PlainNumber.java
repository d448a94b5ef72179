package corewright.bench.capture.csv;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * A number as most files have them, a sign, digits and a decimal point, read eight bytes at a time:
 * up to seven digits before the point and fifteen in all. Anything else is not one.
 *
 * <p>A digit's byte less '0' is 0 to 9, and adding 0x76 to a byte sets its highest bit unless it is
 * one of these: one addition finds every byte of eight that is no digit.
 */
final class PlainNumber {
  /** Bytes that may be looked at, the sign and what follows the number among them. */
  static final int LONGEST = 1 + 2 * Long.BYTES;

  private static final VarHandle EIGHT =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
  private static final long ZEROS = 0x3030303030303030L;
  private static final long NINE_TO_HIGH_BIT = 0x7676767676767676L;
  private static final long HIGH_BITS = 0x8080808080808080L;
  private static final long[] TEN = {1, 10, 100, 1000, 10_000, 100_000, 1_000_000, 10_000_000};

  private final int point;
  private long mantissa;
  private int places;
  private int end;

  PlainNumber(int point) {
    this.point = point ^ '0';
  }

  /** Whether one begins here; at least {@value #LONGEST} bytes from here on are in the array. */
  boolean isAt(byte[] text, int at) {
    boolean negative = text[at] == '-';
    int start = negative || text[at] == '+' ? at + 1 : at;
    long first = (long) EIGHT.get(text, start) ^ ZEROS;
    long others = others(first);
    int before = Long.numberOfTrailingZeros(others) >>> 3; // 8 where all are digits
    long behind = others & (others - 1);
    boolean fraction = before < Long.BYTES && ((first >>> (8 * before)) & 0xFF) == point;
    int digits;
    if (!fraction) {
      digits = before;
      if (digits == Long.BYTES) {
        return false;
      }
      mantissa = value(first, digits);
      places = 0;
      end = start + digits;
    } else if (behind != 0) {
      int length = Long.numberOfTrailingZeros(behind) >>> 3;
      digits = length - 1;
      mantissa = value(withoutPoint(first, before), digits);
      places = digits - before;
      end = start + length;
    } else {
      long second = (long) EIGHT.get(text, start + Long.BYTES) ^ ZEROS;
      int more = Long.numberOfTrailingZeros(others(second)) >>> 3;
      digits = Long.BYTES - 1 + more;
      if (more == Long.BYTES) {
        return false;
      }
      mantissa = value(withoutPoint(first, before), Long.BYTES - 1) * TEN[more];
      mantissa += value(second, more);
      places = digits - before;
      end = start + 1 + digits;
    }
    mantissa = negative ? -mantissa : mantissa;
    return digits > 0;
  }

  private static long others(long eight) {
    return ((eight + NINE_TO_HIGH_BIT) | eight) & HIGH_BITS;
  }

  private static long withoutPoint(long eight, int before) {
    long left = (1L << (8 * before)) - 1;
    return (eight & left) | ((eight >>> 8) & ~left);
  }

  /** Value of the first {@code digits} of eight, none to eight of them. */
  private static long value(long eight, int digits) {
    if (digits == 0) {
      return 0;
    }
    long x = eight << (8 * (Long.BYTES - digits)); // zeros in front
    // Two digits in every other byte, then four, then all eight, by multiplying once each.
    x = 10 * x + (x >>> 8);
    long outer = (x & 0x000000FF000000FFL) * (100 + (1_000_000L << 32));
    long inner = ((x >>> 16) & 0x000000FF000000FFL) * (1 + (10_000L << 32));
    return (outer + inner) >>> 32;
  }

  long mantissa() {
    return mantissa;
  }

  int places() {
    return places;
  }

  /** Index of the byte after it. */
  int end() {
    return end;
  }
}
