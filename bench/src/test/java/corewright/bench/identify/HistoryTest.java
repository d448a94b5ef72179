package corewright.bench.identify;

import static corewright.bench.identify.InventedKey.answers;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.identify.History.Clue;
import corewright.bench.record.Hypothesis;
import corewright.bench.record.Identification;
import corewright.profiles.Family;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HistoryTest {
  private static final Family FAMILY = InventedKey.dated();

  /**
   * By hand, Bayes' rule: 0.80 · 0.04 · 0.98, 0.08 · 0.15 · 0.95, 0.09 · 0.85 · 0.20, 0.03 · 0.50 ·
   * 0.90 for opened and no foreign solder: 0.03136, 0.0114, 0.0153, 0.0135, sum 0.07156.
   */
  @Test
  void thePastOfAnOpenedUnitByHand() {
    List<Hypothesis> all = History.hypotheses(Map.of(Clue.OPENED, true, Clue.RESOLDERED, false));
    assertEquals(
        List.of("as made", "rebuilt before", "mixed", "relabelled"),
        all.stream().map(Hypothesis::id).toList());
    assertEquals(0.03136 / 0.07156, all.get(0).probability(), 1e-12);
    assertEquals(0.0153 / 0.07156, all.get(1).probability(), 1e-12);
    assertEquals(List.of("it was opened"), all.get(1).because());
    assertEquals(1, all.stream().mapToDouble(Hypothesis::probability).sum(), 1e-12);
  }

  @Test
  void missingIsNotNoButLookedForAndAbsentIs() {
    assertEquals(List.of(), identify("").history());
    double unasked = of("as made", identify("outside=opened"));
    double absent = of("as made", identify("outside=opened solder=no"));
    double present = of("as made", identify("outside=opened solder=yes"));
    assertTrue(absent > unasked && unasked > present, absent + " " + unasked + " " + present);
  }

  @Test
  void openedAndSolderedByHandIsAnEarlierRebuild() {
    Identification seen = identify("outside=opened solder=yes");
    assertTrue(seen.probably(Hypothesis.REBUILT_BEFORE), seen.history().toString());
    assertTrue(seen.history().get(0).handling().contains("footprints"));
  }

  /**
   * Label says one build, housing and connector another, and the label was moved. By hand, with a
   * date that is not after the end: 0.80 · 0.05 · 0.02 · 0.97, 0.08 · 0.80 · 0.60 · 0.60, 0.09 ·
   * 0.10 · 0.10 · 0.95, 0.03 · 0.30 · 0.15 · 0.80.
   */
  @Test
  void aSwappedLabelThatWasMovedIsRelabelled() {
    Identification seen = identify("part=10 date=1431 bosses=8 connector=black label=moved");
    assertEquals("RESIN", seen.variant());
    assertEquals("relabelled", seen.history().get(0).id(), seen.history().toString());
    assertEquals(
        0.02304 / (0.000776 + 0.02304 + 0.000855 + 0.00108),
        seen.history().get(0).probability(),
        1e-12);
    assertEquals(
        List.of("the label was moved", "the label speaks for another build"),
        seen.history().get(0).because());
  }

  @Test
  void aUnitThatAgreesThroughoutIsAsItWasMade() {
    Identification seen =
        identify(
            "part=10 date=1431 bosses=6 connector=grey switching=65 outside=sound label=whole");
    assertEquals("as made", seen.history().get(0).id());
    assertTrue(seen.history().get(0).probability() > 0.95, seen.history().toString());
    assertFalse(seen.probably(Hypothesis.REBUILT_BEFORE));
  }

  /** Board G in a light unit: it was opened, so mass counts for less and the board for as much. */
  @Test
  void onAnOpenedUnitWhatAHandCanChangeCountsForLess() {
    double untouched = identify("mass=300 outside=sound").posteriors().getOrDefault("RESIN", 0.0);
    double opened = identify("mass=300 outside=opened").posteriors().getOrDefault("RESIN", 0.0);
    // by hand: 0.3 · 0.2 / (0.3 · 0.2 + 0.7 · 0.8), with 0.4 and 0.6 once it was opened
    assertEquals(0.06 / 0.62, untouched, 1e-12);
    assertEquals(0.12 / 0.54, opened, 1e-12);
  }

  private static double of(String id, Identification seen) {
    return seen.history().stream()
        .filter(h -> h.id().equals(id))
        .mapToDouble(Hypothesis::probability)
        .sum();
  }

  private static Identification identify(String words) {
    return Identifier.identify(FAMILY, answers(words));
  }
}
