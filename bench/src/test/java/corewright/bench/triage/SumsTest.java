package corewright.bench.triage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Diagnosis;
import corewright.profiles.Economics;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The worked example of the trade notes, done by hand beside each sum; its amounts are invented.
 */
class SumsTest {
  private static final Economics MONEY =
      new Economics("EUR", 480, 480, 310, 46, 2.6, 55, 18, 22, 40, 0.88, 60, 25);
  private static final Sums SOFT = new Sums(MONEY, 0.88, 60, 15);

  @Test
  void aSoftGelBuildWithAGoodChance() {
    // 0.88 (480 − 22) + 0.12 · 40 − 46 − 2.6 · 55 − 18 = 403.04 + 4.80 − 207 = 200.84
    assertEquals(200.84, SOFT.rebuild(), 1e-9);
    // 480 − 310 + 60 − 15
    assertEquals(215, SOFT.replace(), 1e-9);
    assertEquals(35, SOFT.giveBack(), 1e-9);
    // 200.84 ≥ 0.15 · 480 = 72
    assertEquals(Means.Economy.REBUILD_PAYS, SOFT.economy());
  }

  /** What a person sees added up must be what the table decided by. */
  @Test
  void theLinesOfEachSumAddUpToIt() {
    assertEquals(SOFT.rebuild(), sum(SOFT.rebuildLines()), 1e-9);
    assertEquals(SOFT.replace(), sum(SOFT.replaceLines()), 1e-9);
    assertEquals(SOFT.giveBack(), sum(SOFT.giveBackLines()), 1e-9);
    // 0.15 · 480; (207 − 40 + 72) / 418
    assertEquals(72, SOFT.least(), 1e-9);
    assertEquals(239.0 / 418, SOFT.enough(), 1e-12);
  }

  private static double sum(List<Sums.Line> lines) {
    return lines.stream().mapToDouble(Sums.Line::amount).sum();
  }

  @Test
  void aHardResinBuild() {
    // 0.15 · 458 + 0.85 · 40 − 207 = 68.70 + 34 − 207 = −104.30
    Sums hard = SOFT.with(0.15);
    assertEquals(-104.30, hard.rebuild(), 1e-9);
    assertEquals(Means.Economy.REPLACE_PAYS, hard.economy());
  }

  @Test
  void breakEvenIsWhereBothAreWorthTheSame() {
    // (207 − 40 + 215) / (480 − 22 − 40) = 382 / 418
    assertEquals(382.0 / 418, SOFT.breakEven(), 1e-12);
    assertEquals(SOFT.replace(), SOFT.with(SOFT.breakEven()).rebuild(), 1e-9);
  }

  @Test
  void oneMoreTestIsWorthMostNearBreakEven() {
    // p 0.91 ± 0.2 → 1 and 0.71: (251 + 215)/2 − 215 = 18, less 10 for the test
    assertEquals((251.0 + 215) / 2 - 215 - 10, SOFT.with(0.91).oneMoreTest(0.2, 10), 1e-9);
    assertEquals(-10, SOFT.with(0.15).oneMoreTest(0.2, 10), 1e-9, "it would change nothing");
  }

  /** A test cannot change what is expected before it is made: the mean of both ends stays p. */
  @Test
  void whereThereIsNoRoomForTheSwingItIsSmaller() {
    // p 0.88 ± 0.12 → 1 and 0.76: 251, and 0.76 · 458 + 0.24 · 40 − 207 = 150.68, so 215 instead
    assertEquals((251.0 + 215) / 2 - 215 - 10, SOFT.oneMoreTest(0.2, 10), 1e-9);
    assertEquals(-10, SOFT.with(1).oneMoreTest(0.2, 10), 1e-9, "nothing is left to learn");
    assertEquals(-10, SOFT.with(0).oneMoreTest(0.2, 10), 1e-9, "nothing is left to learn");
  }

  /** At 55 EUR an hour a third of one costs 18.33; at p 0.91 it brings 18.00: not worth it. */
  @Test
  void oneMoreTestIsAskedForOnlyWhereTheGroupIsOpenAndItPays() {
    Diagnosis open = diagnosis(false);
    Economics cheap = new Economics("EUR", 480, 480, 310, 46, 2.6, 45, 18, 22, 40, 0.88, 60, 25);
    // at 45 EUR the rebuild costs 181: p 0.88 ± 0.12 → 277 and 176.68 (so 215), mean 246;
    // without the test 226.84; 19.16 more for 15.00
    assertEquals(Means.NextTest.WORTH, new Sums(cheap, 0.88, 60, 15).nextTest(Optional.of(open)));
    assertEquals(
        Means.NextTest.NOT_WORTH,
        new Sums(cheap, 0.88, 60, 15).nextTest(Optional.of(diagnosis(true))));
    assertEquals(
        Means.NextTest.NOT_WORTH, new Sums(cheap, 0.88, 60, 15).nextTest(Optional.empty()));
    assertEquals(Means.NextTest.NOT_WORTH, SOFT.with(0.91).nextTest(Optional.of(open)));
  }

  private static Diagnosis diagnosis(boolean determined) {
    return new Diagnosis(
        List.of(new Diagnosis.Candidate("LOOP", "a loop", 0.4, List.of(), List.of(), "Step it.")),
        determined,
        List.of());
  }

  @Test
  void neitherPays() {
    Economics poor = new Economics("EUR", 100, 100, 200, 46, 2.6, 55, 18, 22, 40, 0.5, 60, 25);
    assertEquals(Means.Economy.NEITHER_PAYS, Sums.of(poor).economy());
  }

  @Test
  void theSentencesNameTheAmounts() {
    assertTrue(SOFT.sentences().get(0).contains("+201 EUR"), SOFT.sentences().get(0));
    assertTrue(SOFT.with(0.15).sentences().get(0).contains("−104 EUR"));
    assertEquals("A replacement brings +215 EUR.", SOFT.sentences().get(1));
  }

  @Test
  void aProbabilityOutsideItsRangeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> SOFT.with(1.01));
    assertThrows(IllegalArgumentException.class, () -> SOFT.with(Double.NaN));
  }
}
