package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
        TODAY);
  }

  private static CueAnswer seen(String line, String answer) {
    return new CueAnswer(line, answer, "I. Marsh", Instant.EPOCH);
  }
}
