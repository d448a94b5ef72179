package corewright.bench.capture.csv;

import corewright.bench.capture.CodeColumn;
import corewright.measures.Unit;
import corewright.measures.Waveform;

/**
 * Values of one column as whole numbers of its last decimal: 47.9688 is code 479,688 of 10⁻⁴. Exact
 * as long as all values have so few digits that 31 bits hold them; beyond that the last digits are
 * rounded away.
 */
final class DecimalColumn {
  private static final long[] TEN = new long[19];

  static {
    TEN[0] = 1;
    for (int i = 1; i < TEN.length; i++) {
      TEN[i] = 10 * TEN[i - 1];
    }
  }

  private final CodeColumn codes;
  private int decimals;
  private long largest;

  /**
   * @param expected about how many values will come
   */
  DecimalColumn(int expected) {
    codes = new CodeColumn(expected);
  }

  /** Adds {@code mantissa}·10^−{@code places}. */
  void add(long mantissa, int places) {
    if (places == decimals && Math.abs(mantissa) <= largest) {
      codes.add((int) mantissa); // nothing new about it
      return;
    }
    if (size() == 0 || places > decimals) {
      finer(mantissa, places);
    }
    long code = scaled(mantissa, decimals - places);
    while (Math.abs(code) > Integer.MAX_VALUE) {
      coarser();
      code = scaled(mantissa, decimals - places);
    }
    largest = Math.max(largest, Math.abs(code));
    codes.add((int) code);
  }

  /** Adds the last value again, once for each sample that is missing. */
  void repeat(int times) {
    codes.repeat(times);
  }

  /** Takes on as many more decimals as all values so far, and this one, have room for. */
  private void finer(long mantissa, int places) {
    int wanted = places;
    long value = mantissa;
    if (size() == 0) {
      decimals = places;
      while (Math.abs(value) > Integer.MAX_VALUE) {
        value /= 10;
        decimals--;
      }
      return;
    }
    while (wanted > decimals
        && (largest > Integer.MAX_VALUE / TEN[Math.min(9, wanted - decimals)]
            || wanted - decimals > 9
            || Math.abs(scaled(mantissa, wanted - places)) > Integer.MAX_VALUE)) {
      wanted--;
    }
    if (wanted > decimals) {
      int factor = (int) TEN[wanted - decimals];
      codes.change(code -> code * factor);
      largest *= factor;
      decimals = wanted;
    }
  }

  private void coarser() {
    codes.change(code -> (int) scaled(code, -1));
    largest = scaled(largest, -1);
    decimals--;
  }

  /** mantissa·10^{@code shift}, rounded half away from zero; too large becomes a huge number. */
  private static long scaled(long mantissa, int shift) {
    if (shift < 0) {
      long divisor = TEN[Math.min(18, -shift)];
      long half = mantissa < 0 ? -divisor / 2 : divisor / 2;
      return (mantissa + half) / divisor;
    }
    if (mantissa == 0 || shift == 0) {
      return mantissa;
    }
    boolean fits = shift <= 18 && Math.abs(mantissa) <= Long.MAX_VALUE / TEN[shift];
    return fits ? mantissa * TEN[shift] : Long.signum(mantissa) * Long.MAX_VALUE;
  }

  int size() {
    return codes.size();
  }

  /**
   * The column as a waveform; it is handed out once.
   *
   * @param unitDecimals power of ten that the written unit is smaller by
   */
  Waveform waveform(Unit unit, int unitDecimals) {
    double lsb = Double.parseDouble("1e" + -(decimals + unitDecimals));
    return codes.waveform(lsb, 0, unit);
  }
}
