package corewright.measures.code;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class JumpsTest {
  @ParameterizedTest
  @EnumSource
  void agreesWithPlainDifferences(Seeded.Kind kind) {
    short[] raw = Seeded.codes(kind, 30_000, 21);
    Codes codes = Codes.of(raw);
    Random random = new Random(22);
    for (int threshold : new int[] {1, 2, 55, 1310, 40_000, 65_535}) {
      for (int trial = 0; trial < 12; trial++) {
        int from = trial == 0 ? 0 : random.nextInt(raw.length);
        int to = trial == 0 ? raw.length : from + random.nextInt(raw.length - from + 1);
        int[] plain =
            IntStream.range(Math.max(1, from), to)
                .filter(i -> Math.abs((double) raw[i] - raw[i - 1]) > threshold)
                .toArray();
        assertArrayEquals(plain, new Jumps(threshold).in(codes, from, to));
      }
    }
  }

  @Test
  void findsTheEdgesOfALoadWhereTheyAre() {
    int[] jumps = new Jumps(1310).in(Codes.of(load()), 0, 10_000);
    assertArrayEquals(new int[] {1013, 2026, 3039, 4052}, IntStream.of(jumps).limit(4).toArray());
    assertEquals(9, jumps.length);
  }

  /** Levels of 1013 samples each, 3000 codes apart, in noise of 20 codes. */
  private static short[] load() {
    return Seeded.codes(Seeded.Kind.STEPPING, 10_000, 23);
  }

  @Test
  void keepsTheFirstOfEachCluster() {
    int[] jumps = {5, 6, 106, 207, 400, 400 + 100, 400 + 201};
    assertArrayEquals(new int[] {5, 207, 400, 601}, Jumps.firstOfEach(jumps, 100));
    assertArrayEquals(new int[0], Jumps.firstOfEach(new int[0], 100));
  }

  @Test
  void refusesAThresholdThatEveryCodeOrNoneExceeds() {
    assertThrows(IllegalArgumentException.class, () -> new Jumps(0));
    assertThrows(IllegalArgumentException.class, () -> new Jumps(65_536));
  }
}
