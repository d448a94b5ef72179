package corewright.bench.log.table;

/** The resolution of a channel, from the numbers that it printed. */
final class Steps {
  /** Fewer different values than this do not show the smallest step by themselves. */
  private static final int ENOUGH = 8;

  private static final int MOST_DECIMALS = 4;

  private Steps() {}

  /**
   * The smallest difference between two values; of few values what all of them are multiples of, if
   * that is less.
   *
   * @param sorted ascending, as printed
   * @return NaN if all are the same
   */
  static double of(double[] sorted) {
    double least = Double.NaN;
    int different = sorted.length == 0 ? 0 : 1;
    for (int i = 1; i < sorted.length; i++) {
      double step = sorted[i] - sorted[i - 1];
      if (step > 1e-9 * Math.abs(sorted[i])) {
        different++;
        least = step >= least ? least : step;
      }
    }
    return different > 1 && different < ENOUGH ? Math.min(least, common(sorted)) : least;
  }

  /** The greatest number of which all values are whole multiples, of up to four decimals. */
  private static double common(double[] values) {
    double scale = 1;
    for (int decimals = 0; decimals < MOST_DECIMALS && !whole(values, scale); decimals++) {
      scale *= 10;
    }
    long divisor = 0;
    for (double v : values) {
      divisor = divisor(divisor, Math.abs(Math.round(v * scale)));
    }
    return divisor == 0 ? Double.MAX_VALUE : divisor / scale;
  }

  private static boolean whole(double[] values, double scale) {
    for (double v : values) {
      if (Math.abs(v * scale - Math.rint(v * scale)) > 1e-6) {
        return false;
      }
    }
    return true;
  }

  private static long divisor(long a, long b) {
    return b == 0 ? a : divisor(b, a % b);
  }
}
