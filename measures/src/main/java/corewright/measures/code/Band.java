package corewright.measures.code;

/**
 * Codes from {@code low} to {@code high}, both inside. Whole stretches are asked for codes outside
 * without a branch in the loop; one that has some is halved, and only a short one looked at code by
 * code.
 */
record Band(int low, int high) {
  /** Long enough that a loop over it runs at the memory's speed. */
  static final int STRETCH = 16_384;

  /** Short enough to be gone through code by code. */
  static final int SHORT = 256;

  private static final int FAR = 1 << 20;

  /** Ends beyond every code are as good as any, and differences from them must not overflow. */
  Band {
    low = Math.max(-FAR, Math.min(FAR, low));
    high = Math.max(-FAR, Math.min(FAR, high));
  }

  /** The codes whose distance from {@code level} is at most {@code half}. */
  static Band about(double level, double half) {
    return new Band((int) Math.ceil(level - half), (int) Math.floor(level + half));
  }

  boolean holds(int code) {
    return code >= low && code <= high;
  }

  /** Whether pairs {@code [from, to)} have a code outside. */
  boolean isLeft(int[] pairs, int from, int to) {
    return outside(pairs, from, to, low, high) != 0;
  }

  private static int outside(int[] pairs, int from, int to, int low, int high) {
    int outside = 0;
    for (int i = from; i < to; i++) {
      int pair = pairs[i];
      int early = (pair << 16) >> 16;
      int late = pair >> 16;
      // The sign of a difference tells.
      outside += ((high - early) | (early - low) | (high - late) | (late - low)) >>> 31;
    }
    return outside;
  }

  /** Index of the last code of {@code [from, to)} outside; −1 where there is none. */
  int lastOutside(Codes codes, int from, int to) {
    int end = to;
    while (end > from) {
      int start = Math.max(from, (end - 1) & -STRETCH);
      int last = last(codes, start, end);
      if (last >= 0) {
        return last;
      }
      end = start;
    }
    return -1;
  }

  private int last(Codes codes, int from, int to) {
    // Pairs that reach over the ends may only make it look in vain.
    if (!isLeft(codes.pairs(), from >> 1, (to + 1) >> 1)) {
      return -1;
    }
    if (to - from > SHORT) {
      int middle = (from + to) >>> 1;
      int late = last(codes, middle, to);
      return late >= 0 ? late : last(codes, from, middle);
    }
    int at = to - 1;
    while (at >= from && holds(codes.at(at))) {
      at--;
    }
    return at >= from ? at : -1;
  }
}
