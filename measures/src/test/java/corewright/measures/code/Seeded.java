package corewright.measures.code;

import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Seeded codes of the kinds that channels bring: quiet, noisy, stepping, clipped, over all codes.
 */
final class Seeded {
  /** What the codes look like. */
  enum Kind {
    CONSTANT,
    QUIET,
    NOISY,
    STEPPING,
    CLIPPED,
    UNIFORM
  }

  private Seeded() {}

  static short[] codes(Kind kind, int count, long seed) {
    Random random = new Random(seed);
    int level = random.nextInt(40_000) - 20_000;
    return switch (kind) {
      case CONSTANT -> rounded(count, i -> level);
      case QUIET -> rounded(count, i -> level + random.nextGaussian());
      case NOISY -> rounded(count, i -> level + 400 * random.nextGaussian());
      case STEPPING ->
          rounded(count, i -> level + 3000 * (i / 1013 % 3) + 20 * random.nextGaussian());
      case CLIPPED -> rounded(count, i -> 32_000 + 900 * random.nextGaussian());
      case UNIFORM -> rounded(count, i -> random.nextInt(1 << 16) + Short.MIN_VALUE);
    };
  }

  private static short[] rounded(int count, IntToDoubleFunction signal) {
    short[] codes = new short[count];
    for (int i = 0; i < count; i++) {
      long code = Math.round(signal.applyAsDouble(i));
      codes[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, code));
    }
    return codes;
  }

  /** A stretch as plain doubles. */
  static double[] doubles(short[] codes, int from, int to) {
    return IntStream.range(from, to).mapToDouble(i -> codes[i]).toArray();
  }
}
