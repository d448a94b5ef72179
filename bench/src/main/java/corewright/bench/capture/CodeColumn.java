package corewright.bench.capture;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntUnaryOperator;

/**
 * Codes of one channel as they come: on the heap while they are few, in a temporary file where they
 * are many, so that memory does not grow with the record. Not thread-safe.
 */
public final class CodeColumn {
  /** As many stay on the heap at most. */
  static final int BLOCK = 1 << 22;

  private int[] codes; // the last of them
  private int size;
  private Optional<SpilledCodes> earlier = Optional.empty();

  /**
   * @param expected about how many codes will come
   */
  public CodeColumn(int expected) {
    codes = new int[Math.max(16, Math.min(BLOCK, expected))];
  }

  /** Adds one. */
  public void add(int code) {
    if (size == codes.length) {
      makeRoom();
    }
    codes[size++] = code;
  }

  /** Adds some. */
  public void add(short[] some) {
    for (short code : some) {
      add(code);
    }
  }

  /** Adds the last code again, once for each sample that is missing. */
  public void repeat(int times) {
    int last = size > 0 ? codes[size - 1] : earlier.orElseThrow().at(size() - 1);
    for (int i = 0; i < times; i++) {
      add(last);
    }
  }

  /** Replaces each by what {@code to} makes of it. */
  public void change(IntUnaryOperator to) {
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

  public int size() {
    return size + earlier.map(SpilledCodes::size).orElse(0);
  }

  /** All of them as a waveform; it is handed out once, and nothing can be added any more. */
  public Waveform waveform(double lsb, double offset, Unit unit) {
    if (earlier.isPresent()) {
      SpilledCodes store = spill();
      codes = new int[0];
      return Waveform.ofStored(store, lsb, offset, unit);
    }
    int[] all = size == codes.length ? codes : Arrays.copyOf(codes, size);
    codes = new int[0];
    return Waveform.ofOwnCodes(all, lsb, offset, unit);
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
}
