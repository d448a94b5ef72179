package corewright.bench.identify;

import static corewright.bench.identify.InventedKey.answers;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class QuestionsTest {
  private static final Family FAMILY = InventedKey.family();

  /**
   * By hand: bosses of reliability 0.92 on "can it be rebuilt", prior 0.7 to 0.3. H(0.3) = 0.88129
   * bit. P(6) = 0.7 · 0.92 + 0.3 · 0.08 = 0.668, after it RESIN 0.024/0.668 = 0.03593, H = 0.22330;
   * after 8 RESIN 0.276/0.332 = 0.83133, H = 0.65466; expected 0.36651: the gain is 0.51478 bit.
   */
  @Test
  void theGainOfAQuestionByHand() {
    Key twoFates =
        new Key(
            InventedKey.family(List.of(InventedKey.SOFT, InventedKey.RESIN)),
            Map.of("SOFT", 0.7, "RESIN", 0.3));
    Questions.Worth bosses =
        new Questions(twoFates, Map.of())
            .ranked().stream()
                .filter(w -> w.cue().equals(InventedKey.BOSSES))
                .findFirst()
                .orElseThrow();
    // the variants are the fates here, so knowing the build adds its fifth
    assertEquals(1.2 * 0.51478, bosses.gain_bits(), 1e-5);
  }

  @Test
  void theCheapAndTellingComesBeforeOpening() {
    List<String> order =
        new Questions(new Key(FAMILY, Map.of()), Map.of())
            .ranked().stream().map(w -> w.cue().id()).toList();
    for (String cheap : List.of("bosses", "connector", "switching")) {
      assertTrue(order.indexOf(cheap) < order.indexOf("board"), order.toString());
    }
    assertTrue(order.indexOf("bosses") < order.indexOf("mass"), order.toString());
    assertFalse(order.contains("pins"), "every build has the same: it would tell nothing");
  }

  @Test
  void nothingIsAskedThatWouldChangeNothing() {
    // what is left is SOFT or GEL: the same kit, the same fate
    Identification seen =
        IdentifierTest.identify("bosses=6 connector=grey switching=65 mass=light");
    assertTrue(seen.posterior() < 0.8);
    assertFalse(Identifier.candidatesDiffer(FAMILY, seen));
    Identification sure = IdentifierTest.identify("bosses=8 connector=black switching=100");
    assertEquals(Band.IDENTIFIED, sure.band());
    assertEquals("", sure.nextQuestion());
  }

  @Test
  void candidatesDifferAsLongAsOneOfThemWouldMeetAnotherEnd() {
    assertTrue(Identifier.candidatesDiffer(FAMILY, IdentifierTest.identify("bosses=8")));
    assertFalse(
        Identifier.candidatesDiffer(
            FAMILY, IdentifierTest.identify("bosses=8 connector=black switching=100")));
  }

  @Test
  void whatWasAskedAndNotSeenIsNotAskedAgain() {
    Optional<Cue> first = Identifier.next(FAMILY, List.of(), Map.of());
    Optional<Cue> second =
        Identifier.next(FAMILY, answers(first.orElseThrow().id() + "=not_seen"), Map.of());
    assertFalse(second.equals(first));
  }

  /** By hand as above: after 6 SOFT or GEL, after 8 RESIN with 0.276/0.332. */
  @Test
  void whatEachAnswerWouldMakeOfIt() {
    List<Consequence> bosses =
        Identifier.consequences(FAMILY, List.of(), Map.of(), InventedKey.BOSSES);
    assertEquals(List.of("6", "8"), bosses.stream().map(Consequence::answer).toList());
    assertEquals("SOFT", bosses.get(0).variant());
    assertEquals("RESIN", bosses.get(1).variant());
    assertEquals(0.332, bosses.get(1).chance(), 1e-12);
    assertEquals(0.276 / 0.332, bosses.get(1).posterior(), 1e-12);
  }
}
