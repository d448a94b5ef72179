package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FirstDayTest {
  @TempDir private Path shop;

  @Test
  void whoeverReadsTheCodeBecomesTheOwnerAndNobodyAfterwards() throws Exception {
    try (Visit visit = Visit.to(shop)) {
      String code = visit.console().address().replaceAll(".*code=", "");
      assertEquals("/first", location(visit.get("/")));
      assertTrue(visit.get("/first?code=" + code).body().contains("The first day"));

      HttpResponse<String> guess = visit.post("/first", form("0123456789ab"));
      assertEquals(422, guess.statusCode());
      assertTrue(guess.body().contains("The code does not fit"), guess.body());
      Map<String, String> apart = form(code);
      apart.put("again", "copper and cone");
      assertTrue(visit.post("/first", apart).body().contains("differ"));
      assertFalse(Files.exists(shop.resolve("shop.json")));

      assertEquals("/", location(visit.post("/first", form(code))));
      String today = visit.get("/").body();
      assertTrue(today.contains("Mill Yard Rebuild"), today);
      assertTrue(today.contains("H. Oduya, owner"), today);

      Visit other = visit.another();
      assertEquals("/in", location(other.get("/first?code=" + code)));
      other.get("/in");
      assertEquals(422, other.post("/first", form(code)).statusCode());
    }
  }

  /** The people of the demonstration take their steps in a shop with accounts, as everybody. */
  @Test
  void aSampleShopFillsItself() throws Exception {
    try (Visit visit = Visit.to(shop)) {
      String code = visit.console().address().replaceAll(".*code=", "");
      visit.get("/first");
      Map<String, String> sample = form(code);
      sample.put("sample", "yes");
      assertEquals("/", location(visit.post("/first", sample)));
      String today = "";
      for (int i = 0; i < 600 && !today.contains("core 2 of 8"); i++) {
        Thread.sleep(100);
        today = visit.get("/").body();
        assertFalse(today.contains("could not be filled"), today);
      }
      assertTrue(today.contains("core 2 of 8"), today);
    }
  }

  private static Map<String, String> form(String code) {
    return new HashMap<>(
        Map.of(
            "code",
            code,
            "shop",
            "Mill Yard Rebuild",
            "address",
            "4 Mill Yard, Brackwater",
            "name",
            Visit.OWNER,
            "password",
            Visit.PASSWORD,
            "again",
            Visit.PASSWORD));
  }

  static String location(HttpResponse<String> answer) {
    assertEquals(303, answer.statusCode() == 302 ? 303 : answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElse("");
  }
}
