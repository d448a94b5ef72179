package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is practised, the shop's own record does not know of it. */
class PracticeTest {
  @TempDir private Path shop;

  @Test
  void aUnitIsTakenPreparedAndLeavesNothingInTheShop() {
    try (Visit visit = Visit.asOwner(shop)) {
      assertTrue(visit.get("/practice").body().contains("Take one of ie110"));
      HttpResponse<String> taken = visit.post("/practice/take", Map.of("family", "ie110"));
      String bench = Visit.location(taken);
      assertTrue(bench.startsWith("/bench/practice-ie110?tag=U-"), bench);
      String ready = visit.get(bench).body();
      assertTrue(ready.contains("EMULATED"));
      assertTrue(ready.contains("Second person, by name"), "110 V take two people");
      assertTrue(ready.contains("Two things before it can start") || ready.contains("2 things"));
      assertFalse(ready.contains("id=\"start\""));
      HttpResponse<String> early = visit.post("/bench/practice-ie110/start", Map.of());
      assertEquals(422, early.statusCode(), early.body());

      String tag = bench.substring(bench.indexOf('=') + 1);
      visit.post(
          "/bench/practice-ie110/prepare",
          Map.of("tag", tag, "cautions", "yes", "second", Visit.OWNER));
      assertFalse(
          visit.get("/bench/practice-ie110").body().contains("id=\"start\""),
          "the driver is no second person");
      visit.post(
          "/bench/practice-ie110/prepare",
          Map.of("tag", tag, "cautions", "yes", "second", "T. Okafor"));
      assertTrue(visit.get("/bench/practice-ie110").body().contains("id=\"start\""));
      Visit counter = visit.colleague("T. Okafor", Role.COUNTER);
      assertFalse(
          counter.get("/bench/practice-ie110").body().contains("id=\"start\""),
          "who has confirmed nothing cannot start");
      assertEquals(422, visit.get("/practice/" + tag).statusCode(), "nobody has tested it yet");
      try (Workshop own = Visit.workshop(shop)) {
        assertFalse(own.ledger().knows(tag));
      }
      assertTrue(Files.isDirectory(shop.resolve("practice")));
    }
  }
}
