package corewright.bench.identify;

import static corewright.bench.identify.InventedKey.answers;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.profiles.Family;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RekeyTest {
  private static final Family FAMILY = InventedKey.family();

  @Test
  void theSameKeySaysTheSame() {
    Rekey again = rekey(FAMILY, "bosses=6 connector=grey");
    assertFalse(again.variantChanges());
    assertTrue(again.sameKey());
    assertEquals(again.before().orElseThrow(), again.now());
  }

  @Test
  void aUnitWhoseBuildTheNewKeySaysOtherwiseChanges() {
    Family withoutSoft = InventedKey.family(List.of(InventedKey.GEL, InventedKey.RESIN));
    Rekey changed = rekey(withoutSoft, "bosses=6 connector=grey board=B");
    assertTrue(changed.variantChanges());
    assertEquals("GEL", changed.now().variant());
  }

  @Test
  void anAnswerThatTheNewKeyDoesNotKnowIsSaidAndCountsForNothing() {
    List<CueAnswer> answers = answers("bosses=6 connector=red");
    Rekey rekey = Rekey.of(FAMILY, Optional.empty(), answers, Map.of());
    assertEquals(List.of("connector: red"), rekey.dropped());
    assertEquals(Identifier.identify(FAMILY, answers("bosses=6")), rekey.now());
    assertTrue(rekey.variantChanges(), "it was never identified before");
  }

  /** What was read off a label is read again as the new key reads it. */
  @Test
  void whatWasReadIsReadAgain() {
    List<CueAnswer> answers = answers("date=1631");
    Rekey rekey = Rekey.of(InventedKey.dated(), Optional.empty(), answers, Map.of());
    assertEquals(
        Identifier.identify(InventedKey.family(), answers("date=late")).posteriors(),
        rekey.now().posteriors());
  }

  private static Rekey rekey(Family family, String words) {
    List<CueAnswer> answers = answers(words);
    Identification before = Identifier.identify(FAMILY, answers);
    return Rekey.of(family, Optional.of(before), answers, Map.of());
  }
}
