package corewright.bench.identify;

import static corewright.bench.identify.InventedKey.answers;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.profiles.Family;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class IdentifierTest {
  private static final Family FAMILY = InventedKey.family();

  /** By hand, Bayes' rule: priors 0.4, 0.3, 0.3; one cue of two answers, reliability 0.92. */
  @Test
  void onePosteriorByHand() {
    Identification seen = identify("bosses=8");
    // RESIN 0.3 · 0.92 = 0.276; SOFT 0.4 · 0.08 = 0.032; GEL 0.3 · 0.08 = 0.024; sum 0.332
    assertEquals("RESIN", seen.variant());
    assertEquals(0.276 / 0.332, seen.posterior(), 1e-12);
    assertEquals("SOFT", seen.runnerUp());
    assertEquals(0.032 / 0.332, seen.runnerUpPosterior(), 1e-12);
    assertEquals(7, seen.keyRevision());
    assertEquals(1, seen.posteriors().values().stream().mapToDouble(p -> p).sum(), 1e-12);
  }

  /** By hand: 0.02 for a cue of reliability 0.99 that speaks against, instead of 0.01. */
  @Test
  void noSingleCueKillsTheTruth() {
    // board G against SOFT: (1 − 0.98)/2 = 0.01, floored to 0.02
    Identification seen = identify("board=G");
    double sum = 0.3 * 0.98 + 0.4 * 0.02 + 0.3 * 0.02;
    assertEquals(0.3 * 0.98 / sum, seen.posterior(), 1e-12);
  }

  @Test
  void missingIsNotNo() {
    Identification nothing = identify("");
    assertEquals(Map.of("SOFT", 0.4, "GEL", 0.3, "RESIN", 0.3), rounded(nothing.posteriors()));
    assertEquals(Band.UNCERTAIN, nothing.band());
    assertEquals(
        identify("bosses=6").posteriors(), identify("bosses=6 board=not_seen").posteriors());
    assertEquals(
        identify("bosses=6").posteriors(),
        identify("bosses=6 moisture=dry").posteriors(),
        "a line of the checklist is no cue");
  }

  /** Three label cues are one vote of at most 0.8 against 0.2: the housing's two outvote them. */
  @Test
  void aSwappedLabelDoesNotOutvoteTheHousing() {
    Identification seen = identify("part=10 date=early hardware=h1 bosses=8 connector=black");
    assertEquals("RESIN", seen.variant());
    // RESIN 0.3 · 0.25 · 0.92 · 0.93, SOFT 0.4 · 1 · 0.08 · 0.07, GEL between the two
    assertTrue(seen.posterior() > 0.9, "" + seen.posterior());
    assertEquals(Band.PROBABLE, seen.band(), "a second look before it is opened");
    assertTrue(
        seen.conflicts()
            .get(0)
            .startsWith("The label speaks for SOFT, the unit under it for RESIN"),
        seen.conflicts().toString());
    assertFalse(seen.nextQuestion().isEmpty());
  }

  @Test
  void theLabelSpeaksForNoMoreThanItsMostReliableCue() {
    Map<String, Double> three = identify("part=30 date=late hardware=h3").posteriors();
    Map<String, Double> one = identify("hardware=h3").posteriors();
    // by hand: RESIN 0.3 · 1, the others · 0.25, the cap of 0.2 / 0.8
    assertEquals(0.3 / (0.3 + 0.7 * 0.25), three.get("RESIN"), 1e-12);
    assertTrue(three.get("RESIN") < 0.8 && one.get("RESIN") < 0.8);
  }

  @Test
  void whatTravelsWithTheBoardSettlesASwappedLabel() {
    Identification seen =
        identify("part=10 date=early hardware=h1 bosses=8 connector=black switching=100");
    assertEquals("RESIN", seen.variant());
    assertEquals(Band.IDENTIFIED, seen.band());
    assertEquals("", seen.nextQuestion());
    assertEquals(
        "'hardware' was read as h1, RESIN has h3 (reliability 0.80).", seen.conflicts().get(0));
  }

  @Test
  void aConflictAmongReliableCuesIsSettledByTheBoardAlone() {
    Identification seen = withoutGel("bosses=8 connector=grey mass=light switching=65");
    assertEquals("SOFT", seen.variant());
    assertTrue(seen.posterior() > 0.95);
    assertEquals(Band.PROBABLE, seen.band());
    assertEquals(
        List.of("'bosses' was read as 8, SOFT has 6 (reliability 0.92)."), seen.conflicts());
    assertEquals("board?", seen.nextQuestion(), "the one look that can settle it");
    Identification opened = withoutGel("bosses=8 connector=grey mass=light switching=65 board=B");
    assertEquals(Band.IDENTIFIED, opened.band());
    assertEquals(seen.conflicts(), opened.conflicts(), "and it is still said");
  }

  @Test
  void conflictsComeWorstFirst() {
    List<String> conflicts =
        identify("board=G switching=100 connector=black bosses=6 date=early mass=light")
            .conflicts();
    assertEquals(
        List.of("'bosses'", "'mass'", "'date'"),
        conflicts.stream().filter(c -> c.startsWith("'")).map(c -> c.split(" ")[0]).toList());
  }

  /** A pin map that no build has is another family, whatever the label says. */
  @Test
  void theBenchVetoes() {
    Identification seen = identify("bosses=8 connector=black switching=100 board=G pins=another's");
    assertEquals(Band.UNCERTAIN, seen.band());
    assertTrue(seen.conflicts().get(0).startsWith("Stop: 'pins' was found to be another's"));
    assertEquals("", seen.nextQuestion(), "nothing more is asked of it");
  }

  @Test
  void theLatestAnswerToACueCounts() {
    assertEquals(identify("bosses=8").posteriors(), identify("bosses=6 bosses=8").posteriors());
    assertEquals(identify("").posteriors(), identify("bosses=6 bosses=not_seen").posteriors());
  }

  @Test
  void anAnswerThatIsNoneIsRefusedWithThoseThatAre() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> identify("bosses=7")).getMessage();
    assertEquals(
        "'7' is no answer to cue 'bosses' of family inv48. Use one of 6, 8, or 'not seen'.",
        message);
  }

  @Test
  void theShopsOwnSharesReplaceTheFamilys() {
    Identification seen =
        Identifier.identify(FAMILY, answers(""), Map.of("SOFT", 0.1, "GEL", 0.1, "RESIN", 0.8));
    assertEquals("RESIN", seen.variant());
    assertEquals(0.8, seen.posterior(), 1e-12);
  }

  @Test
  void aFamilyWithoutVariantsIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Identifier.identify(InventedKey.family(List.of()), answers("")));
  }

  private static Identification withoutGel(String words) {
    return Identifier.identify(FAMILY, answers(words), Map.of("GEL", 0.0, "RESIN", 0.05));
  }

  static Identification identify(String words) {
    return Identifier.identify(FAMILY, answers(words));
  }

  private static Map<String, Double> rounded(Map<String, Double> posteriors) {
    return posteriors.entrySet().stream()
        .collect(
            java.util.stream.Collectors.toMap(
                Map.Entry::getKey, e -> Math.round(e.getValue() * 1e9) / 1e9));
  }
}
