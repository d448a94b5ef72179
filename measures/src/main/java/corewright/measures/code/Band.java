package corewright.measures.code;

/**
 * Codes from {@code low} to {@code high}, both inside. Whole stretches are asked for codes outside
 * without a branch in the loop; only a stretch that has some is looked at code by code.
 */
record Band(int low, int high) {
  private static final int STRETCH = 2048;
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
      // Pairs that reach over the ends may only make it look in vain.
      if (isLeft(codes.pairs(), start >> 1, (end + 1) >> 1)) {
        for (int i = end - 1; i >= start; i--) {
          if (!holds(codes.at(i))) {
            return i;
          }
        }
      }
      end = start;
    }
    return -1;
  }
}
