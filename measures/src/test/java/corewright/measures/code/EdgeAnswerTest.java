package corewright.measures.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class EdgeAnswerTest {
  @ParameterizedTest
  @EnumSource
  void agreesWithPlainArithmetic(Seeded.Kind kind) {
    short[] raw = Seeded.codes(kind, 30_000, 31);
    Codes codes = Codes.of(raw);
    CodeCounts counts = new CodeCounts();
    Random random = new Random(32);
    for (int trial = 0; trial < 200; trial++) {
      int edge = random.nextInt(raw.length - 2);
      int settled = edge + 1 + random.nextInt(Math.min(5000, raw.length - edge - 2) + 1) / 2;
      int to = settled + 1 + random.nextInt(raw.length - settled);
      to = Math.min(to, raw.length);
      double band = Math.pow(10, random.nextDouble() * 4.5);
      counts.add(codes, settled, to);
      EdgeAnswer found = EdgeAnswer.of(codes, edge, settled, to, counts.take(), band);

      double mean = Arrays.stream(Seeded.doubles(raw, settled, to)).sum() / (to - settled);
      double lowest = Arrays.stream(Seeded.doubles(raw, edge, settled)).min().orElseThrow();
      int recovery = 0;
      for (int i = edge; i < to; i++) {
        recovery = Math.abs(raw[i] - mean) > band ? i + 1 - edge : recovery;
      }
      assertEquals(lowest, found.lowest());
      assertEquals(recovery, found.recovery(), "band " + band + " from " + edge + " to " + to);
    }
  }

  /** Closed form: a·exp(−t/τ) is within the band b from t = τ·ln(a/b) on. */
  @Test
  void recoveryOfAnExponential() {
    double depth = 1600;
    double tau = 800;
    short[] raw = new short[100_000];
    for (int i = 0; i < raw.length; i++) {
      raw[i] =
          (short) Math.round(19_660 - (i < 20_001 ? 0 : depth * Math.exp(-(i - 20_001) / tau)));
    }
    Codes codes = Codes.of(raw);
    CodeCounts counts = new CodeCounts();
    counts.add(codes, 40_001, raw.length);
    EdgeAnswer found = EdgeAnswer.of(codes, 20_001, 40_001, raw.length, counts.take(), 196.6);
    assertEquals(19_660 - depth, found.lowest());
    assertEquals(tau * Math.log(depth / 196.6), found.recovery(), 2.5); // codes are 2 samples apart
  }

  @Test
  void refusesAnEdgeWithoutSettling() {
    Codes codes = Codes.of(Seeded.codes(Seeded.Kind.QUIET, 100, 33));
    CodeStatistics window = new CodeStatistics(1, 5, 25, 5, 5, 5, 5);
    assertThrows(IllegalArgumentException.class, () -> EdgeAnswer.of(codes, 10, 10, 20, window, 1));
    assertThrows(
        IllegalArgumentException.class, () -> EdgeAnswer.of(codes, 10, 20, 101, window, 1));
  }
}
