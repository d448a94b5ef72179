package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.station.demo.SampleCore;
import corewright.station.web.LaterClock;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Above 60 V DC two people, and the second one is asked for the password of their own account. */
@Timeout(60)
class SecondPersonTest {
  private static final String BENCH = "/bench/emulated-ie110";
  private static final String SECOND = "T. Okafor";
  private static final String OWN = "eight blue kettles";

  @TempDir private Path shop;

  @Test
  void whoStandsByProvesItForThisUnitAndThisStart() throws Exception {
    Files.writeString(
        shop.resolve("shop.json"),
        "{\"name\":\"Mill Yard Rebuild\",\"address\":\"4 Mill Yard\",\"invented\":true}");
    String tag;
    String other;
    try (Workshop workshop = Visit.workshop(shop)) {
      tag = SampleCore.receive(workshop, "ie110");
      other = SampleCore.receive(workshop, "ie110");
    }
    LaterClock clock = new LaterClock();
    try (Visit visit = Visit.asOwnerInHaste(shop, clock)) {
      try (Workshop workshop = Visit.workshop(shop)) {
        workshop.ledger().accounts().put(SECOND, Role.COUNTER, OWN.toCharArray(), Visit.OWNER);
      }
      visit.get(BENCH);
      choose(visit, tag);
      assertFalse(visit.get(BENCH).body().contains("id=\"start\""), "nobody stands by");
      visit.post(BENCH + "/prepare", Map.of("tag", tag, "cautions", "yes", "second", SECOND));
      assertTrue(visit.get(BENCH).body().contains("has not confirmed with the password"));
      assertEquals(422, visit.post(BENCH + "/start", Map.of()).statusCode());

      HttpResponse<String> wrong = stands(visit, SECOND, Visit.PASSWORD);
      assertEquals(422, wrong.statusCode());
      assertTrue(wrong.body().contains("Name and password do not fit"), wrong.body());
      assertFalse(visit.get(BENCH).body().contains("id=\"start\""));
      try (Workshop workshop = Visit.workshop(shop)) {
        assertEquals(1, workshop.ledger().accounts().wrongSince(SECOND, Instant.EPOCH));
      }
      for (int i = 0; i < 5; i++) {
        assertEquals(422, stands(visit, "nobody", OWN).statusCode());
      }
      assertTrue(stands(visit, "nobody", OWN).body().contains("Too many wrong passwords"));

      assertEquals(BENCH, Visit.location(stands(visit, "t. okafor", OWN)));
      String ready = visit.get(BENCH).body();
      assertTrue(ready.contains("<b>T. Okafor</b> <span>stands by for this unit."), ready);
      assertTrue(ready.contains("id=\"start\""), ready);
      assertFalse(ready.contains(OWN), "a password is on no page");

      clock.passes(Duration.ofMinutes(10).minusSeconds(30)); // the requests take their time
      assertTrue(visit.get(BENCH).body().contains("id=\"start\""), "still there");
      clock.passes(Duration.ofSeconds(30));
      String lapsed = visit.get(BENCH).body();
      assertFalse(lapsed.contains("id=\"start\""), "whoever stood by may have left");
      assertTrue(lapsed.contains("has not confirmed with the password"), lapsed);
      assertEquals(422, visit.post(BENCH + "/start", Map.of()).statusCode());
      assertEquals(BENCH, Visit.location(stands(visit, SECOND, OWN)));
      assertTrue(visit.get(BENCH).body().contains("id=\"start\""), "proved again");

      choose(visit, other);
      choose(visit, other);
      assertFalse(visit.get(BENCH).body().contains("id=\"start\""), "that was another unit");
      assertEquals(BENCH, Visit.location(stands(visit, SECOND, OWN)));
      assertEquals(BENCH, Visit.location(visit.post(BENCH + "/start", Map.of())));
    }
    try (Workshop workshop = Visit.workshop(shop)) {
      assertEquals(1, workshop.ledger().dossier(other).runs().size(), "the run was let begin");
      assertEquals(
          List.of(SECOND),
          workshop.ledger().lives().history(other).stream()
              .filter(h -> h.kind().equals("run begun"))
              .map(h -> h.body().path("second").asText())
              .toList(),
          "who stood by is kept with the run");
    }
  }

  private static void choose(Visit visit, String tag) {
    visit.post(BENCH + "/prepare", Map.of("tag", tag, "cautions", "yes"));
  }

  private static HttpResponse<String> stands(Visit visit, String name, String password) {
    return visit.post(BENCH + "/second", Map.of("second", name, "password", password));
  }
}
