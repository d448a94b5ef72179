package corewright.measures.code;

/**
 * Codes of a 16-bit digitizer, two in each {@code int}, the earlier one in the lower half: as they
 * lie in a little-endian file, and as vector instructions can work on them. Not copied: whoever
 * hands the pairs in leaves them alone while they are being read.
 */
public final class Codes {
  private final int[] pairs;
  private final int size;

  private Codes(int[] pairs, int size) {
    this.pairs = pairs;
    this.size = size;
  }

  /**
   * @param size codes in use; where it is odd the upper half of the last pair is not one of them
   * @throws IllegalArgumentException if there are fewer pairs than that
   */
  public static Codes ofPairs(int[] pairs, int size) {
    if (size < 0 || size > 2L * pairs.length) {
      throw new IllegalArgumentException(size + " codes are not in " + pairs.length + " pairs");
    }
    return new Codes(pairs, size);
  }

  /** The same codes, packed. */
  public static Codes of(short... codes) {
    int[] pairs = new int[(codes.length + 1) / 2];
    for (int i = 0; i < codes.length; i++) {
      pairs[i >> 1] |= (codes[i] & 0xFFFF) << (16 * (i & 1));
    }
    return new Codes(pairs, codes.length);
  }

  public int size() {
    return size;
  }

  public int at(int i) {
    int pair = pairs[i >> 1];
    return (i & 1) == 0 ? early(pair) : late(pair);
  }

  /** Copies codes {@code [from, to)} into other pairs, the first to place {@code at}. */
  void copyTo(int[] into, int at, int from, int to) {
    int first = from;
    int last = from;
    if (((from ^ at) & 1) == 0 && to - from > 1) {
      first = from + (from & 1);
      last = to - (to & 1);
      System.arraycopy(pairs, first >> 1, into, (at + first - from) >> 1, (last - first) >> 1);
    }
    for (int i = from; i < first; i++) {
      put(into, at + i - from, at(i));
    }
    for (int i = last; i < to; i++) {
      put(into, at + i - from, at(i));
    }
  }

  /** Writes one code among pairs. */
  public static void put(int[] pairs, int at, int code) {
    int pair = pairs[at >> 1];
    pairs[at >> 1] =
        (at & 1) == 0 ? (pair & 0xFFFF0000) | (code & 0xFFFF) : (pair & 0xFFFF) | (code << 16);
  }

  /** The pairs themselves, for kernels; only read. */
  int[] pairs() {
    return pairs;
  }

  /**
   * @throws IllegalArgumentException unless {@code [from, to)} lies inside
   */
  void require(int from, int to) {
    if (from < 0 || from > to || to > size) {
      throw new IllegalArgumentException(
          "codes [" + from + ", " + to + ") are asked for, of " + size);
    }
  }

  static int early(int pair) {
    return (pair << 16) >> 16;
  }

  static int late(int pair) {
    return pair >> 16;
  }
}
