package corewright.station.web.place;

import static corewright.station.web.place.CounterTest.core;
import static corewright.station.web.place.CounterTest.received;
import static corewright.station.web.place.CounterTest.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.triage.Sums;
import corewright.profiles.Economics;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A customer's unit fails: the table asks before it rebuilds, and a person may not go past that.
 */
class WhatWeDoTest {
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

  /** By hand: 0.88 · 458 + 0.12 · 40 − 207 = 200.84; 72 is reached at 239 / 418 = 0.57. */
  @Test
  void thePictureOfTheSumsSaysHowWrongTheChanceMayBe() {
    Economics money = new Economics("EUR", 480, 480, 310, 46, 2.6, 55, 18, 22, 40, 0.88, 60, 25);
    SumPage page = SumPage.of(new Sums(money, 0.88, 60, 15), Disposition.REBUILD).orElseThrow();
    assertEquals("201 EUR", page.accounts().get(0).total());
    assertTrue(page.accounts().get(0).best());
    SumPage.Picture picture = page.picture().orElseThrow();
    assertEquals("0.57", picture.enough());
    assertEquals("0.31 to spare", picture.spare());
    assertTrue(picture.now_y() < picture.floor(), "what pays lies above the floor");
    SumPage.Picture resin =
        SumPage.of(new Sums(money, 0.15, 60, 15), Disposition.REPLACE)
            .orElseThrow()
            .picture()
            .orElseThrow();
    assertEquals("0.42 too little", resin.spare());
    assertTrue(resin.now_y() > resin.floor());
  }

  @Test
  void theRowTheSumsTheQuestionAndWhatAPersonMayDecideOtherwise() throws Exception {
    Map<String, String> core = core("R-77");
    core.put("family", "ref48");
    String tag = received(visit, core);
    String at = "/decide/" + tag;
    assertTrue(visit.get(at).body().contains("Not decided"), "a page without a decision");
    Bench.fails(shop, tag, Visit.OWNER, 7);

    String asks = visit.get(at).body();
    assertTrue(asks.contains("Do you approve the quote?"), asks);
    assertTrue(asks.contains("Whose question: <b>customer</b>, due"), asks);
    assertTrue(visit.get("/decide").body().contains("Answer the question"));
    Map<String, String> rebuild =
        Map.of("to", "REBUILD", "destination", "queue", "why", "he said so on the telephone");
    String barred = refusal(visit.post(at + "/otherwise", rebuild));
    assertTrue(barred.contains("without their approval"), barred);

    Visit counter = visit.colleague("C. Bell", Role.COUNTER);
    counter.get(at);
    assertEquals(403, counter.post(at, Map.of()).statusCode());
    assertEquals(403, counter.post(at + "/otherwise", rebuild).statusCode());
    Visit.location(
        counter.post(
            at + "/agreed",
            Map.of("name", "approval", "answer", "approved", "by", "Mr Orrel, telephone")));
    assertTrue(
        refusal(visit.post(at + "/agreed", Map.of("name", "approval", "answer", "maybe")))
            .contains("approved"));

    visit.post(at, Map.of());
    String decided = visit.get(at).body();
    assertTrue(decided.contains("<h1>REBUILD"), decided);
    assertTrue(decided.contains("Row D81, "), "the row of a failed unit that pays");
    assertTrue(decided.contains("is the first that fits"), decided);
    assertFalse(decided.contains("How wrong could we be"), "a family without prices has no sums");
    assertTrue(decided.contains("said: approved"), decided);

    Map<String, String> give =
        Map.of("to", "RETURN", "destination", "customer", "why", "The boat sails on Friday");
    Visit.location(visit.post(at + "/otherwise", give));
    String otherwise = visit.get(at).body();
    assertTrue(otherwise.contains("<h1>RETURN"), otherwise);
    assertTrue(otherwise.contains("The boat sails on Friday"), "kept, and shown");
    assertTrue(refusal(visit.post(at + "/otherwise", Map.of("to", "RETURN"))).contains("reason"));

    Map<String, String> hold =
        Map.of("question", "Shall we wait for the boat?", "owner", "customer", "due", "2026-12-03");
    assertTrue(refusal(visit.post(at + "/hold", Map.of("question", "Q?"))).contains("until when"));
    Visit.location(counter.post(at + "/hold", hold));
    assertTrue(visit.get(at).body().contains("Shall we wait for the boat?"));
    assertEquals(403, counter.post("/stepback/" + tag, Map.of("reason", "a slip")).statusCode());
    Visit.location(visit.post("/stepback/" + tag, Map.of("reason", "a slip")));
    try (Workshop workshop = Visit.workshop(shop)) {
      Decision last = workshop.ledger().dossier(tag).decision().orElseThrow();
      assertEquals(Disposition.RETURN, last.disposition());
      assertEquals("D81 overruled", last.row());
      assertEquals("to return", workshop.ledger().lives().standing(tag).life().stage().words());
    }
  }
}
