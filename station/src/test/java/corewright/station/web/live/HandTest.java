package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.run.Clock;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Catalogue;
import corewright.station.web.Visit;
import corewright.station.work.ShopFile;
import corewright.station.work.Workshop;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What the bench cannot do is read elsewhere and entered before the run, as on paper. */
@Timeout(60)
class HandTest {
  private static final String BENCH = "/bench/practice-sd48";
  private static final String HAND = BENCH + "/hand";

  @TempDir private static Path folder;
  private static Visit visit;
  private String tag;

  @BeforeAll
  static void open() {
    visit = Visit.asOwnerInHaste(folder);
  }

  @AfterAll
  static void close() {
    visit.close();
  }

  @BeforeEach
  void takeAUnit() {
    visit.get("/practice");
    String bench = Visit.location(visit.post("/practice/take", Map.of("family", "sd48")));
    tag = bench.substring(bench.indexOf('=') + 1);
    visit.get(bench);
    choose("sd48-final");
  }

  @Test
  void eachStepSaysWhatItWantsAndItsLimit() {
    String page = visit.get(HAND).body();
    for (String said :
        List.of(
            "Case against all terminals, 25 V",
            "Limit 1 MΩ or more",
            "Limit 3 mA or less",
            "Limit 46.5 V or more",
            "counted: no ± U",
            "nobody entered it",
            "as " + Visit.OWNER + "’s readings")) {
      assertTrue(page.contains(said), said + " in " + page);
    }
    assertTrue(visit.get(BENCH).body().contains("None of 10 steps by hand are entered."));
    choose("sd48-arrival");
    assertFalse(visit.get(BENCH).body().contains("steps by hand"), "it has none");
    assertEquals(422, visit.get(HAND).statusCode());
  }

  @Test
  void whatIsWrongIsToldAtOnceAndNothingIsKeptOrLost() {
    visit.get(HAND);
    Map<String, String> form = form(Map.of("key-off/value", "1,2", "insulation/value", "much"));
    HttpResponse<String> answer = visit.post(HAND, form);
    assertEquals(422, answer.statusCode());
    assertTrue(answer.body().contains("Input current, not enabled: ± U is missing"), answer.body());
    assertTrue(answer.body().contains("Case to terminals: the value 'much' is no number"));
    assertFalse(visit.get(HAND).body().contains("Entered by"));
    String draft = visit.get(HAND).body().replaceAll("(?s).*data-draft=\"([^\"]+)\".*", "$1");
    visit.post("/draft/" + draft, form);
    assertTrue(visit.get(HAND).body().contains("value=\"much\""), "the browser was closed");
    assertTrue(visit.get(BENCH).body().contains("None of 10"), "a draft is no reading");
  }

  @Test
  void eachKeepsTheirOwnNameAndTheRunTakesThemIntoItsRecord() throws Exception {
    visit.get(HAND);
    Map<String, String> current = Map.of("key-off/value", "1.2", "key-off/expanded", "0.1");
    Map<String, String> mine = form(current);
    mine.putAll(Map.of("key-off/unit", "mA", "key-off/instrument", "meter <4>"));
    assertEquals(BENCH, Visit.location(visit.post(HAND, mine)));
    Visit other = visit.colleague("I. Marsh", Role.TECHNICIAN);
    other.get(BENCH + "?tag=" + tag);
    Map<String, String> both = new HashMap<>(mine);
    both.putAll(Map.of("pins/value", "0", "pins/instrument", "pin table 2"));
    assertEquals(BENCH, Visit.location(other.post(HAND, both)));
    String page = visit.get(HAND).body();
    assertTrue(page.contains("Entered by " + Visit.OWNER), "it was not touched");
    assertTrue(page.contains("Entered by I. Marsh"), page);
    assertTrue(page.contains("value=\"meter &lt;4>\""), page);
    assertTrue(visit.get(BENCH).body().contains("2 of 10 steps by hand are entered."));

    assertEquals(BENCH, Visit.location(visit.post(BENCH + "/start", Map.of())));
    while (!visit.get(BENCH).body().contains("data-live")) {
      Clock.system().pause(Duration.ofMillis(20));
    }
    visit.post(BENCH + "/stop", Map.of());
    while (visit.get(BENCH).body().contains("data-live")) {
      Clock.system().pause(Duration.ofMillis(20));
    }
    RunRecord run = run();
    assertEquals(RunEnd.Kind.STOPPED, run.end().kind(), run.end().saw());
    Map<Quantity, Reading> read = run.measured().orElseThrow().readings();
    Reading.Measured amps = (Reading.Measured) read.get(Quantity.KEY_OFF_CURRENT);
    assertEquals(0.0012, amps.value().value(), 1e-12);
    assertEquals(0.0001, amps.value().expanded(2), 1e-12);
    assertEquals(
        "Entered by hand by " + Visit.OWNER + ", read with meter <4>.", amps.flags().get(0));
    String cold = String.valueOf(read.get(Quantity.COLD_OUTPUT));
    assertTrue(cold.contains("nobody entered it"), cold);
    choose("sd48-final");
    assertTrue(visit.get(HAND).body().contains("Entered by"), "the next attempt takes them again");
  }

  /** Two have the empty form open; each keeps what they have read, and nobody loses any of it. */
  @Test
  void whatAnotherHasEnteredMeanwhileIsNeitherLostNorWrittenOver() {
    visit.get(HAND);
    Map<String, String> mine = form(Map.of("pins/value", "0", "pins/instrument", "pin table 2"));
    Visit other = visit.colleague("I. Marsh", Role.TECHNICIAN);
    other.get(BENCH + "?tag=" + tag);
    Map<String, String> theirs = form(Map.of("key-off/value", "1.2", "key-off/expanded", "0.1"));
    theirs.putAll(Map.of("key-off/unit", "mA", "key-off/instrument", "meter 4"));
    assertEquals(BENCH, Visit.location(visit.post(HAND, mine)));
    assertEquals(BENCH, Visit.location(other.post(HAND, theirs)));
    assertTrue(visit.get(BENCH).body().contains("2 of 10 steps by hand are entered."));
    Map<String, String> over = form(Map.of("pins/value", "3", "pins/instrument", "pin table 2"));
    HttpResponse<String> refused = other.post(HAND, over);
    assertEquals(422, refused.statusCode());
    assertTrue(refused.body().contains(Visit.OWNER + " has entered it meanwhile"), refused.body());
    String seen =
        visit.get(HAND).body().replaceAll("(?s).*name=\"pins/seen\" value=\"([^\"]+)\".*", "$1");
    assertEquals(
        BENCH, Visit.location(visit.post(HAND, form(Map.of("pins/seen", seen))))); // emptied it
    assertTrue(visit.get(BENCH).body().contains("1 of 10 steps by hand is entered."));
  }

  @Test
  void atARealBenchOnlyWhoMayTestEnters() {
    Visit counter = visit.colleague("T. Okafor", Role.COUNTER);
    counter.get("/");
    assertEquals(BENCH, Visit.location(counter.post(HAND, form(Map.of()))), "anybody may practise");
    Map<String, String> strange = form(Map.of());
    strange.put("profile", "ie110-final");
    assertEquals(422, counter.post(HAND, strange).statusCode());
    strange.put("tag", "U-9999");
    assertEquals(422, counter.post(HAND, strange).statusCode());
  }

  private void choose(String profile) {
    visit.post(BENCH + "/prepare", Map.of("tag", tag, "profile", profile, "cautions", "yes"));
  }

  private Map<String, String> form(Map<String, String> fields) {
    Map<String, String> form = new HashMap<>(fields);
    form.put("tag", tag);
    form.put("profile", "sd48-final");
    return form;
  }

  private RunRecord run() {
    Path practice = folder.resolve("practice");
    try (Workshop own =
        Workshop.open(Catalogue.ofHome(), practice, ShopFile.in(folder), "looks", Clock.system())) {
      return own.ledger().dossier(tag).runs().get(0);
    }
  }
}
