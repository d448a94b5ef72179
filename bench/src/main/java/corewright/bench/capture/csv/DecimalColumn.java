package corewright.bench.capture.csv;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntUnaryOperator;

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

  /** More values than that leave the heap, so that memory does not grow with the file. */
  private static final int BLOCK = 1 << 22;

  private int[] codes; // the last of them
  private int size;
  private Optional<SpilledCodes> earlier = Optional.empty();
  private int decimals;
  private long largest;

  /**
   * @param expected about how many values will come
   */
  DecimalColumn(int expected) {
    codes = new int[Math.max(16, Math.min(BLOCK, expected))];
  }

  /** Adds {@code mantissa}·10^−{@code places}. */
  void add(long mantissa, int places) {
    if (places == decimals && size < codes.length && Math.abs(mantissa) <= largest) {
      codes[size++] = (int) mantissa; // nothing new about it
      return;
    }
    if (size == codes.length) {
      makeRoom();
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
    codes[size++] = (int) code;
  }

  /** Adds the last value again: a sample that is missing. */
  void repeat() {
    int last = size > 0 ? codes[size - 1] : earlier.orElseThrow().at(size() - 1);
    add(last, decimals);
  }

  private void makeRoom() {
    if (size < BLOCK) {
      codes = Arrays.copyOf(codes, Math.min(BLOCK, 2 * size));
    } else {
      spill();
    }
  }

  private SpilledCodes spill() {
    SpilledCodes store = earlier.orElseGet(SpilledCodes::new);
    store.add(codes, size);
    earlier = Optional.of(store);
    size = 0;
    return store;
  }

  private void change(IntUnaryOperator to) {
    for (int i = 0; i < size; i++) {
      codes[i] = to.applyAsInt(codes[i]);
    }
    earlier.ifPresent(
        store -> {
          for (int i = 0; i < store.size(); i++) {
            store.set(i, to.applyAsInt(store.at(i)));
          }
        });
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
      change(code -> code * factor);
      largest *= factor;
      decimals = wanted;
    }
  }

  private void coarser() {
    change(code -> (int) scaled(code, -1));
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
    return size + earlier.map(SpilledCodes::size).orElse(0);
  }

  /**
   * The column as a waveform; it is handed out once.
   *
   * @param unitDecimals power of ten that the written unit is smaller by
   */
  Waveform waveform(Unit unit, int unitDecimals) {
    double lsb = Double.parseDouble("1e" + -(decimals + unitDecimals));
    if (earlier.isPresent()) {
      SpilledCodes store = spill();
      codes = new int[0];
      return Waveform.ofStored(store, lsb, 0, unit);
    }
    int[] all = size == codes.length ? codes : Arrays.copyOf(codes, size);
    codes = new int[0];
    return Waveform.ofOwnCodes(all, lsb, 0, unit);
  }
}
