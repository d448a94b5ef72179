package corewright.station.web.place;

import static corewright.station.web.place.CounterTest.core;
import static corewright.station.web.place.CounterTest.received;
import static corewright.station.web.place.CounterTest.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.life.Stage;
import corewright.bench.record.Identification.Band;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which build and in which condition, as a person answers one question after the other. */
class WhichBuildTest {
  private static final Pattern ASKED = Pattern.compile("name=\"cue\" value=\"([^\"]*)\"");
  @TempDir private static Path shop;
  private static Visit visit;

  @BeforeAll
  static void open() {
    visit = Visit.asOwner(shop); // one console for all of them: making passwords is slow on purpose
  }

  @AfterAll
  static void close() {
    visit.close();
  }

  /**
   * The family's file says: six bosses, a grey header and 485 g are A2, which has no other mass.
   */
  @Test
  void theKeyOfTheFamilyLeadsToTheBuildOneQuestionAtATime() throws Exception {
    Map<String, String> a2 =
        Map.of(
            "bosses",
            "6",
            "connector",
            "2-row grey",
            "potting",
            "soft gel",
            "mass",
            "485",
            "partNumber",
            "SD48-20",
            "dateCode",
            "1431");
    String tag = received(visit, core("B-1"));
    assertTrue(visit.get("/build").body().contains("received since"), "a box nobody looked at");
    String page = visit.get("/build/" + tag).body();
    int asked = 0;
    for (Matcher cue = ASKED.matcher(page); cue.find(); cue = ASKED.matcher(page)) {
      String id = cue.group(1);
      assertTrue(page.contains("Where to look"), "each question shows where");
      visit.post("/build/" + tag, Map.of("cue", id, "answer", a2.getOrDefault(id, "not seen")));
      page = visit.get("/build/" + tag).body();
      assertTrue(++asked < 12, "it goes on asking: " + id);
    }
    assertTrue(page.contains("It is A2, gel-filled build"), page);
    assertTrue(page.contains("</th><td class=\"n\">0.9") || page.contains("over 0.99"), page);

    String again = visit.get("/build/" + tag + "?cue=connector").body();
    assertTrue(again.contains("Before it was said: 2-row grey."), again);
    visit.post("/build/" + tag, Map.of("cue", "connector", "answer", "2-row black"));
    String conflict = visit.get("/build/" + tag).body();
    assertTrue(conflict.contains("What does not fit"), conflict);
    try (Workshop workshop = Visit.workshop(shop)) {
      assertEquals(Stage.IDENTIFIED, workshop.ledger().lives().standing(tag).life().stage());
      assertEquals(
          2L,
          workshop.ledger().lives().history(tag).stream()
              .filter(h -> h.kind().equals("answered") && h.body().toString().contains("connector"))
              .count(),
          "a corrected answer is a new one");
      assertTrue(
          workshop.ledger().dossier(tag).identification().orElseThrow().band() != Band.IDENTIFIED);
    }
  }

  @Test
  void whatCannotBeIsAskedBackAndWhatIsNoAnswerIsRefused() throws Exception {
    String tag = received(visit, core("B-2"));
    String at = "/build/" + tag;
    assertTrue(refusal(visit.post(at, Map.of("cue", "bosses", "answer", "7"))).contains("6, 8"));
    assertTrue(refusal(visit.post(at, Map.of("cue", "none", "answer", "7"))).contains("asked"));
    assertTrue(refusal(visit.post(at, Map.of("cue", "bosses"))).contains("Nothing was answered"));
    Map<String, String> week99 = Map.of("cue", "dateCode", "read", "1499");
    String doubt = refusal(visit.post(at, week99));
    assertTrue(doubt.contains("1499 would count for nothing"), doubt);
    Visit.location(visit.post(at, Map.of("cue", "dateCode", "read", "1499", "keep", "yes")));
    assertTrue(visit.get(at).body().contains("Date code was read as 1499"), "in words");

    Visit counter = visit.colleague("C. Bell", Role.COUNTER);
    counter.get(at);
    assertEquals(403, counter.post(at, Map.of("cue", "bosses", "answer", "6")).statusCode());
  }

  /** ISO 8601 has no week 99; bent pins are grade C and forbid power in the family's checklist. */
  @Test
  void theChecklistGradesAndForbidsPowerAndOpensWhatIsWorthAsking() throws Exception {
    String tag = received(visit, core("B-3"));
    String at = "/build/" + tag + "/condition";
    assertTrue(visit.get(at).body().contains("name=\"is/pins\""));
    visit.post(
        at,
        List.of(
            Map.entry("is/pins", "bent"),
            Map.entry("is/arrival", "well packed"),
            Map.entry("is/outside", "dented or dirty"),
            Map.entry("proof", visit.proof())));
    String page = visit.get(at).body();
    assertTrue(page.contains("Grade C, for pins: bent"), page);
    assertTrue(page.contains("Nothing may be energised"), page);
    assertTrue(page.contains("Pin 3, ground?"), "a bent pin asks which");
    assertTrue(page.contains("Do the two halves"), "a dented cover asks for its other half");
    visit.post("/build/" + tag + "/grade", Map.of("grade", "C"));
    assertTrue(visit.get(at).body().contains("grade C"), "taken by a person");
    assertTrue(refusal(visit.post(at, Map.of("is/pins", "gone"))).contains("Possible are"));
  }
}
