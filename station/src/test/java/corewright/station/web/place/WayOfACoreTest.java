package corewright.station.web.place;

import static corewright.station.web.place.CounterTest.core;
import static corewright.station.web.place.CounterTest.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.life.Stage;
import corewright.bench.record.Source;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One core from its rebuild to its claim, over the console. What is refused on the way is common
 * practice of rebuild shops (no source): no open cover on a charge, no seal without a final test,
 * no class without evidence.
 */
class WayOfACoreTest {
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

  private final Map<String, String> none = Map.of();
  private String tag = "";

  @Test
  void fromItsRebuildToItsClaim() throws Exception {
    Visit technician = visit.colleague("T. Okafor", Role.TECHNICIAN);
    Visit counter = visit.colleague("C. Bell", Role.COUNTER);
    received(visit, "R-77");
    rebuilt(technician, counter);
    handedOver(visit, technician);
    cameBack(visit, counter);
    try (Workshop workshop = Visit.workshop(shop)) {
      Claim claim = workshop.ledger().claims().of(tag).get(0);
      assertEquals("W1", claim.claimClass(), "the group that was rebuilt failed again");
      assertEquals("ACCEPTED", claim.outcome());
      List<String> evidence = workshop.ledger().claims().closing(claim).orElseThrow().evidence();
      assertTrue(
          evidence.contains("seal INTACT: 8120 whole, dot under rib 3"), evidence.toString());
      assertTrue(workshop.ledger().verify().whole(), "every step is an event of the chain");
    }
  }

  private void received(Visit visit, String serial) {
    Map<String, String> core = core(serial);
    core.put("family", "ref48");
    tag = CounterTest.received(visit, core);
    Bench.fails(shop, tag, Visit.OWNER, 7);
    visit.post("/decide/" + tag + "/agreed", Map.of("name", "approval", "answer", "approved"));
    visit.post("/decide/" + tag, none);
    assertTrue(visit.get("/rebuild").body().contains("Rebuild it"), "it waits to be rebuilt");
  }

  private void rebuilt(Visit technician, Visit counter) {
    String at = "/rebuild/" + tag;
    String page = technician.get(at).body();
    assertTrue(page.contains("It was not discharged and verified"), page);
    assertFalse(page.contains("Open it</button>"), "absent until it is discharged");
    assertTrue(
        refusal(technician.post(at + "/open", Map.of("read", "yes"))).contains("not discharged"));
    assertTrue(
        refusal(technician.post(at + "/safe", Map.of("volts", "31"))).contains("still holds 31"));
    assertTrue(refusal(technician.post(at + "/safe", Map.of("volts", "low"))).contains("a number"));
    Visit.location(technician.post(at + "/safe", Map.of("volts", "1,2", "note", "meter 3")));
    assertTrue(technician.get(at).body().contains("burn, throw molten metal"), "the cautions");
    assertTrue(refusal(technician.post(at + "/open", none)).contains("confirmed the cautions"));
    counter.get(at);
    assertEquals(403, counter.post(at + "/open", Map.of("read", "yes")).statusCode());
    Visit.location(technician.post(at + "/open", Map.of("read", "yes")));

    Map<String, String> lot =
        Map.of("lot", "lot-7", "part", "2200 uF 63 V", "quantity", "3", "supplier", "Parts Ltd");
    Visit.location(technician.post("/rebuild", lot));
    assertTrue(refusal(technician.post("/rebuild", lot)).contains("in store already"));
    assertTrue(technician.get(at + "?lot=lot-7").body().contains("value=\"LOT-7\" selected"));
    assertTrue(
        refusal(technician.post(at + "/work", Map.of("place1", "C1"))).contains("lacks its lot"));
    assertTrue(refusal(technician.post(at + "/work", none)).contains("Nothing was done"));
    Visit.location(
        technician.post(
            at + "/work",
            Map.of(
                "place1", "C1",
                "lot1", "LOT-7",
                "removed1", "1180 µF, 61 mΩ",
                "did", "Cleaned\nInductor reflowed")));
    String open = technician.get(at).body();
    assertTrue(open.contains("<td>1180 µF, 61 mΩ</td>"), open);
    assertTrue(open.contains("LOT-7, 2200 uF 63 V, 2 left"), "the store counts");
    Visit.location(technician.post(at + "/found", Map.of("group", "POWER_StagE_WEAK")));
    Visit.location(technician.post(at + "/close", none));
    assertTrue(technician.get(at).body().contains("Test it as shipped"));
  }

  private void handedOver(Visit inspector, Visit technician) {
    String at = "/handover/" + tag;
    Map<String, String> seal = Map.of("number", "8120", "mark", "dot under rib 3");
    assertTrue(refusal(inspector.post(at + "/seal", seal)).contains("no seal without a final"));
    Bench.passes(shop, tag, Source.IMPORTED);
    assertTrue(refusal(inspector.post(at + "/seal", seal)).contains("no seal without a final"));
    String elsewhere = technician.get("/decide/" + tag).body();
    assertTrue(elsewhere.contains("was not measured on a bench of this shop"), elsewhere);
    Bench.passes(shop, tag, Source.EMULATED);
    String page = inspector.get(at).body();
    assertTrue(page.contains("EMULATED.</b> What is written of it is a specimen"), page);
    assertTrue(refusal(inspector.post(at + "/seal", seal)).contains("no seal without a final"));
    String decided = technician.get("/decide/" + tag).body();
    assertTrue(
        decided.contains("That proves nothing of a real unit: it cannot be sealed"), decided);
    assertFalse(
        decided.contains(">Give it back<"), "who rebuilt it does not give it back as it came");

    Bench.passes(shop, tag, Source.BENCH);
    assertTrue(technician.get("/decide/" + tag).body().contains("Next it is sealed."));
    technician.get(at);
    assertEquals(403, technician.post(at + "/seal", seal).statusCode(), "an inspector seals");
    assertTrue(inspector.get(at + "?seal=8120").body().contains("value=\"8120\""), "as scanned");
    Visit.location(inspector.post(at + "/seal", seal));
    for (String kind : new String[] {"certificate", "label"}) {
      HttpResponse<String> paper =
          inspector.get(Visit.location(inspector.post(at + "/paper", Map.of("kind", kind))));
      assertEquals("application/pdf", paper.headers().firstValue("Content-Type").orElse(""));
      assertTrue(paper.body().startsWith("%PDF-"), kind);
    }
    assertTrue(refusal(inspector.post(at + "/paper", Map.of("kind", "x"))).contains("Choose"));
    assertTrue(inspector.get(at).body().contains(tag + "-visit-1-certificate"), "and listed");
    Visit.location(inspector.post(at + "/ship", Map.of("carrier", "post", "tracking", "0034")));
    assertTrue(inspector.get(at).body().contains("Covered until "), "a rebuilt unit is covered");
  }

  private void cameBack(Visit visit, Visit counter) {
    Map<String, String> claim = new HashMap<>(Map.of("unit", "R-78", "symptom", "dies when hot"));
    assertTrue(refusal(visit.post("/cameback", claim)).contains("No unit here"));
    claim.put("unit", "r 77");
    claim.put("hours", "120");
    String at = Visit.location(visit.post("/cameback", claim));
    assertEquals("/cameback/" + tag, at, "found by its serial");
    assertTrue(refusal(visit.post("/cameback", claim)).contains("open already"));
    assertTrue(visit.get(at).body().contains("It is not here yet"));

    assertTrue(visit.get("/counter?tag=" + tag).body().contains("Its visit 2"));
    Map<String, String> back = core("R-77");
    back.put("family", "ref48");
    back.put("unit", tag);
    String received = visit.get(Visit.location(visit.post("/counter", back))).body();
    assertTrue(received.contains(">Go on with its claim<"), received);

    assertTrue(visit.get(at).body().contains("Is it our unit"), "one question at a time");
    assertTrue(refusal(say(visit, "seal", "INTACT", "x")).contains("not asked"));
    assertTrue(refusal(say(visit, "identity", "OURS", "")).contains("rests on something"));
    counter.get(at);
    assertEquals(403, say(counter, "identity", "OURS", "serial").statusCode());
    Visit.location(say(visit, "identity", "OURS", "serial and mark"));
    assertTrue(visit.get(at).body().contains("seal <b>8120, dot under rib 3</b>"), "as it left");
    Visit.location(say(visit, "seal", "INTACT", "8120 whole, dot under rib 3"));
    assertTrue(visit.get(at).body().contains("Test it as returned"));
    assertTrue(refusal(visit.post(at + "/close", none)).contains("cannot be classed yet"));
    Bench.fails(shop, tag, Visit.OWNER, 8);
    Visit.location(say(visit, "cause", "NONE", "harness and battery measured"));
    Visit.location(say(visit, "group", "SAME", "C1 again"));
    assertTrue(visit.get(at).body().contains("W1: workmanship or part"), "the table's class");
    Map<String, String> unusual = Map.of("outcome", "DECLINED");
    assertTrue(refusal(visit.post(at + "/close", unusual)).contains("Give the reason"));
    Visit.location(visit.post(at + "/close", none));
    assertTrue(visit.get("/cameback").body().contains("No claim is open"));
  }

  private HttpResponse<String> say(Visit by, String name, String answer, String rests) {
    return by.post("/cameback/" + tag, Map.of("name", name, "answer", answer, "rests", rests));
  }

  @Test
  void aUnitThatWasOpenedAndIsGivenBackIsPromisedNothing() throws Exception {
    received(visit, "R-79");
    String bench = "/rebuild/" + tag;
    visit.post(bench + "/safe", Map.of("volts", "0.4"));
    visit.post(bench + "/open", Map.of("read", "yes"));
    visit.post(bench + "/work", Map.of("did", "Looked inside"));
    Visit.location(visit.post(bench + "/close", none));
    Map<String, String> away =
        Map.of("to", "RETURN", "destination", "customer", "why", "he wants it back");
    Visit.location(visit.post("/decide/" + tag + "/otherwise", away));
    String at = "/handover/" + tag;
    assertTrue(visit.get("/handover").body().contains("Give it back"));
    String alone = refusal(visit.post(at + "/move", Map.of("to", "scrap", "why", "burnt")));
    assertTrue(alone.contains("second person"), alone);
    assertTrue(refusal(visit.post(at + "/move", none)).contains("where it goes"));
    Visit.location(visit.post(at + "/move", Map.of("to", "stock")));
    Visit.location(visit.post("/stepback/" + tag, Map.of("reason", "not ours")));
    Visit.location(visit.post(at + "/ship", Map.of("carrier", "counter")));
    assertTrue(visit.get(at).body().contains("Without a warranty"), "opened, never proven");
    try (Workshop workshop = Visit.workshop(shop)) {
      assertEquals(Stage.SHIPPED, workshop.ledger().lives().standing(tag).life().stage());
    }
  }
}
