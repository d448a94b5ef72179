package corewright.measures.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Against plain arithmetic on the same codes; exact, since all sums are integers. */
class CodeCountsTest {
  @ParameterizedTest
  @EnumSource
  void agreesWithPlainArithmeticWhereverTheStretchLies(Seeded.Kind kind) {
    short[] raw = Seeded.codes(kind, 30_000, 11);
    Codes codes = Codes.of(raw);
    CodeCounts counts = new CodeCounts();
    Random random = new Random(12);
    for (int trial = 0; trial < 60; trial++) {
      int from = random.nextInt(raw.length - 1);
      int length = trial < 40 ? 1 + random.nextInt(40) : raw.length;
      int to = Math.min(raw.length, from + length);
      counts.add(codes, from, to);
      assertAgrees(raw, from, to, counts.take());
    }
  }

  private static void assertAgrees(short[] raw, int from, int to, CodeStatistics found) {
    double[] x = Seeded.doubles(raw, from, to);
    assertEquals(x.length, found.count());
    // Below 2⁵³ doubles are exact too.
    assertEquals(Arrays.stream(x).sum(), found.sum());
    assertEquals(Arrays.stream(x).map(v -> v * v).sum(), found.squares());
    assertEquals(Arrays.stream(x).min().orElseThrow(), found.lowest());
    assertEquals(Arrays.stream(x).max().orElseThrow(), found.highest());
    double[] sorted = x.clone();
    Arrays.sort(sorted);
    assertEquals(sorted[(x.length - 1) / 2], found.lowerMiddle());
    assertEquals(sorted[x.length / 2], found.upperMiddle());
    double mean = Arrays.stream(x).sum() / x.length;
    double rms = Math.sqrt(Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum() / x.length);
    assertEquals(mean, found.mean());
    assertEquals(rms, found.rms(), 1e-9);
  }

  /** Commons Math, estimation R-7: the mean of the two middle values of an even number. */
  @ParameterizedTest
  @EnumSource
  void medianAgreesWithAnotherLibrary(Seeded.Kind kind) {
    for (int count : new int[] {1, 2, 999, 1000}) {
      short[] raw = Seeded.codes(kind, count, 13);
      CodeCounts counts = new CodeCounts();
      counts.add(Codes.of(raw), 0, count);
      Median median = new Median().withEstimationType(EstimationType.R_7);
      assertEquals(median.evaluate(Seeded.doubles(raw, 0, count)), counts.take().median());
    }
  }

  @Test
  void whatIsAddedInPiecesCountsAsTheWhole() {
    short[] raw = Seeded.codes(Seeded.Kind.STEPPING, 20_000, 14);
    Codes codes = Codes.of(raw);
    CodeCounts whole = new CodeCounts();
    whole.add(codes, 3, 19_998);
    CodeCounts pieces = new CodeCounts();
    Random random = new Random(15);
    int at = 3;
    while (at < 19_998) {
      int to = Math.min(19_998, at + random.nextInt(700));
      pieces.add(codes, at, to);
      at = to;
    }
    assertEquals(whole.take(), pieces.take());
  }

  /** Both ends of the scale, which the search reaches last. */
  @Test
  void findsCodesFarFromTheFirst() {
    short[] raw = {0, Short.MIN_VALUE, Short.MAX_VALUE, Short.MAX_VALUE};
    CodeCounts counts = new CodeCounts();
    counts.add(Codes.of(raw), 0, raw.length);
    CodeStatistics found = counts.take();
    assertEquals(new CodeStatistics(4, 32_766, 3_221_094_402L, -32_768, 32_767, 0, 32_767), found);
    assertEquals(65_535, found.peakToPeak());
  }

  @Test
  void beginsAnewAfterwardsAndRefusesNothing() {
    CodeCounts counts = new CodeCounts();
    assertThrows(IllegalArgumentException.class, counts::take);
    counts.add(Codes.of(Seeded.codes(Seeded.Kind.UNIFORM, 5000, 16)), 0, 5000);
    counts.take();
    assertEquals(0, counts.count());
    counts.add(Codes.of((short) 5), 0, 1);
    assertEquals(new CodeStatistics(1, 5, 25, 5, 5, 5, 5), counts.take());
    assertThrows(IllegalArgumentException.class, counts::take);
  }

  /** A record of 200 MS whose squares sum beyond 2⁵³: still exact. */
  @Test
  void squaresBeyondWhatDoublesHold() {
    int[] pairs = IntStream.range(0, 1 << 14).map(i -> 0x7FFF7FFE).toArray();
    Codes codes = Codes.ofPairs(pairs, 1 << 15);
    CodeCounts counts = new CodeCounts();
    for (int i = 0; i < 6000; i++) {
      counts.add(codes, 0, codes.size());
    }
    CodeStatistics found = counts.take();
    assertEquals(6000L * (1 << 14) * (32_767L * 32_767 + 32_766L * 32_766), found.squares());
    assertEquals(0.5, found.rms(), 1e-12);
    assertEquals(32_766.5, found.mean());
  }
}
