package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.diagnose.Priors;
import corewright.bench.inspect.Symptom;
import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.profiles.Catalogue;
import corewright.profiles.CheckItem;
import corewright.profiles.Family;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the record says of a unit, before the decision table. */
class DecidingTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  /** A bent pin is no water: each answer that forbids power asks for what would release it. */
  @ParameterizedTest
  @ValueSource(strings = {"sd48", "ie110", "pv65"})
  void whatForbidsPowerAsksForWhatWouldReleaseIt(String id) {
    Family family = Catalogue.ofHome().family(id);
    for (CheckItem item : family.checklist()) {
      for (String answer : item.answers()) {
        Decision decision = decide(family, item.id(), answer);
        if (!item.blocks().contains(answer)) {
          assertTrue(decision.row().compareTo("D13") > 0, item.id() + " " + answer);
          continue;
        }
        assertEquals(Disposition.PENDING, decision.disposition());
        if (item.id().equals("moisture")) {
          assertTrue(decision.question().contains("dried"), decision.question());
        } else {
          assertTrue(decision.question().contains("put right"), decision.question());
          String said = item.id() + ": " + answer;
          assertTrue(decision.sentence().contains(said), decision.sentence());
        }
      }
    }
  }

  /** Water is dried before anything else is put right. */
  @Test
  void waterComesFirst() {
    Family family = Catalogue.ofHome().family("sd48");
    List<CueAnswer> answers = List.of(seen("pins", "bent"), seen("moisture", "wet"));
    assertTrue(decide(family, answers).question().contains("dried"));
  }

  /** A bent pin forbids power whatever is said of the connector as a whole. */
  @Test
  void onePinForbidsPower() {
    Family family = Catalogue.ofHome().family("sd48");
    List<CueAnswer> answers = List.of(seen("pins", "green or black"), seen("pins/3", "bent"));
    assertTrue(decide(family, answers).sentence().contains("pins: bent"));
  }

  @Test
  void anEmptyCaseGoesBackAndNobodyTestsIt() {
    Family family = Catalogue.ofHome().family("sd48");
    assertEquals("D15", decide(family, "pieces", "empty case or another part").row());
  }

  /**
   * Whatever the customer reports, the row, the disposition and the sentence stay; it stands at the
   * end of the reasons. Evidence is never a test.
   */
  @Test
  void whatIsReportedDecidesNothing() {
    Family family = Catalogue.ofHome().family("sd48");
    for (CueAnswer seen : List.of(seen("moisture", "dry"), seen("pins", "bent"))) {
      Decision without = decide(family, List.of(seen));
      for (Symptom symptom : Symptom.values()) {
        Decision with = decide(family, List.of(seen, seen(symptom.kind().id(), symptom.words())));
        assertEquals(without.row(), with.row(), symptom.words());
        assertEquals(without.disposition(), with.disposition());
        assertEquals(without.destination(), with.destination());
        assertEquals(without.sentence(), with.sentence());
        assertEquals(
            without.reasons(), with.reasons().subList(0, without.reasons().size()), "and before");
        assertEquals(without.reasons().size() + 2, with.reasons().size(), symptom.words());
      }
    }
  }

  private static Decision decide(Family family, String line, String answer) {
    return decide(family, List.of(seen(line, answer)));
  }

  private static Decision decide(Family family, List<CueAnswer> answers) {
    Core core =
        new Core(
            "U-1", family.id(), "7", "as read", "A customer", "repair", "dead", Instant.EPOCH, "I");
    return Deciding.decide(
        family,
        new Dossier(core, 1, answers, Optional.empty(), List.of(), Optional.empty(), List.of()),
        Priors.ofTrade(),
        TODAY);
  }

  private static CueAnswer seen(String line, String answer) {
    return new CueAnswer(line, answer, "I. Marsh", Instant.EPOCH);
  }
}
