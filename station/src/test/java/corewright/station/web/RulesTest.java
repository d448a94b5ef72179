package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RulesTest {
  private static final String NEW = "a few long words";

  @TempDir private static Path folder;
  private static Visit owner;

  @BeforeAll
  static void open() throws IOException {
    Files.writeString(
        folder.resolve("shop.json"),
        "{\"name\": \"Old\", \"address\": \"Here\", \"colour\": \"#8C3D12\"}");
    owner = Visit.asOwner(folder);
  }

  @AfterAll
  static void close() {
    owner.close();
  }

  @Test
  void showsFamiliesWithTheirLimitsAndWhereTheNumbersComeFrom() throws IOException {
    Visit visit = HostileShop.owner();
    String page = visit.get("/rules").body();
    assertTrue(page.contains("/rules/family/sd48"), page);
    assertFalse(page.contains("/rules/family/ref48"), "a family for tests is no core's");
    assertTrue(page.contains("This machine alone"), page);
    String family = visit.get("/rules/family/sd48").body();
    assertTrue(family.contains("46.5 V or more"), family);
    assertTrue(family.contains("guard band of U"), family);
    for (String id : new String[] {"..%2f..%2fpom.xml", "none", "%2e%2e"}) {
      int status = visit.get("/rules/family/" + id).statusCode();
      assertTrue(status == 422 || status == 404 || status == 400, id + ": " + status);
    }
  }

  @Test
  void checksAFileOfTheListAndNoOther() throws IOException {
    Visit visit = HostileShop.owner();
    String good = visit.get("/rules/check?file=profiles/families/sd48/sd48-ship.json").body();
    assertTrue(good.contains("It may be used"), good);
    assertEquals(422, visit.get("/rules/check?file=pom.xml").statusCode());
    assertEquals(422, visit.get("/rules/check?file=../../etc/passwd").statusCode());
  }

  /** Those are the benches that count; a dialect of one's own may lie beside them. */
  @Test
  void showsTheShopsOwnBenchesFirstAndChecksThem() throws IOException {
    Path fixtures = Path.of(System.getProperty("corewright.home"), "fixtures");
    Path own = Files.createDirectories(folder.resolve("benches"));
    String bench = Files.readString(fixtures.resolve("benches/emulated-sd48.json"));
    Files.writeString(own.resolve("own.json"), bench.replace("\"emulated-sd48\"", "\"own-1\""));
    Files.copy(fixtures.resolve("dialects/emulated-load.json"), own.resolve("my-load.json"));
    String page = owner.get("/rules").body();
    int first = page.indexOf("own-1");
    assertTrue(first > 0 && first < page.indexOf("emulated-ie110: "), page);
    assertTrue(page.contains("benches/my-load.json"), page);
    assertTrue(page.contains("own benches in <b>benches</b> of its folder"), page);
    assertTrue(owner.get("/rules/check?file=benches/own.json").body().contains("It may be used"));
    assertEquals(422, owner.get("/rules/check?file=benches/../shop.json").statusCode());
    assertFalse(owner.get("/bench").body().contains("my-load"), "a dialect is no broken bench");
  }

  @Test
  void theOwnerMakesAccountsAndNobodyElseDoes() {
    owner.get("/rules");
    Map<String, String> form = new HashMap<>(Map.of("name", "N. Vane", "role", "COUNTER"));
    form.putAll(Map.of("password", NEW, "again", "another"));
    assertTrue(owner.post("/rules/account", form).body().contains("differ"));
    form.putAll(Map.of("password", "short", "again", "short"));
    HttpResponse<String> tooShort = owner.post("/rules/account", form);
    assertTrue(tooShort.body().contains("password of 8 characters"), tooShort.body());
    form.putAll(Map.of("password", NEW, "again", NEW, "name", Visit.OWNER));
    assertTrue(owner.post("/rules/account", form).body().contains("from yourself"));
    form.put("name", "N. Vane");
    assertEquals("/rules", Visit.location(owner.post("/rules/account", form)));
    assertTrue(owner.get("/rules").body().contains("N. Vane is counter from now on."));

    Visit counter = owner.another();
    counter.signIn("N. Vane", NEW);
    assertFalse(counter.get("/rules").body().contains("/rules/account"));
    form.put("role", Role.OWNER.name());
    assertEquals(403, counter.post("/rules/account", form).statusCode());
    assertEquals(403, counter.post("/rules/backup", Map.of()).statusCode());
    assertEquals(403, counter.post("/rules/shop", Map.of("name", "Ours")).statusCode());
  }

  @Test
  void ownerOrInspectorSignLimitsAndNobodyElseDoes() {
    String family = owner.get("/rules/family/pv65").body();
    assertTrue(family.contains("As delivered with the program"), family);
    String hash =
        family.replaceAll("(?s).*value=\"profile pv65-ship\"><[^>]*value=\"(\\w{64})\".*", "$1");
    Map<String, String> form =
        Map.of("family", "pv65", "what", "profile pv65-ship", "sha256", hash);
    Visit technician = owner.colleague("I. Marsh", Role.TECHNICIAN);
    assertFalse(technician.get("/rules/family/pv65").body().contains("/rules/sign"));
    assertEquals(403, technician.post("/rules/sign", form).statusCode());
    Map<String, String> unseen = new HashMap<>(form);
    unseen.put("sha256", "0".repeat(64));
    assertTrue(owner.post("/rules/sign", unseen).body().contains("has changed since it was shown"));

    assertEquals("/rules/family/pv65", Visit.location(owner.post("/rules/sign", form)));
    String signed = owner.get("/rules/family/pv65").body();
    assertTrue(signed.contains("Signed by " + Visit.OWNER), signed);
    String page = owner.get("/rules").body();
    assertTrue(page.contains("Who signed which limits, 1"), page);
    assertTrue(page.contains(hash.substring(0, 12)), page);
    assertTrue(owner.post("/rules/sign", form).body().contains("Revision 2 of profile pv65-ship"));
  }

  @Test
  void changesWhosePaperItIsAndKeepsWhatElseTheFileSays() throws IOException {
    owner.get("/rules");
    Map<String, String> form =
        new HashMap<>(Map.of("name", HostileShop.SCRIPT, "address", "4 Mill Yard"));
    form.put("warrantyMonths", "0");
    assertEquals(422, owner.post("/rules/shop", form).statusCode());
    assertTrue(Files.readString(folder.resolve("shop.json")).contains("Old"));
    form.putAll(Map.of("warrantyMonths", "18", "region", "DE"));
    assertEquals("/rules", Visit.location(owner.post("/rules/shop", form)));
    String page = owner.get("/rules").body();
    assertFalse(page.contains(HostileShop.SCRIPT), page);
    assertTrue(page.contains("&lt;script&gt;"), page);
    assertTrue(page.contains("value=\"18\""), page);
    assertTrue(Files.readString(folder.resolve("shop.json")).contains("#8C3D12"));
  }

  @Test
  void backsUpAndVerifiesFromThePage() throws IOException {
    owner.get("/rules");
    Visit.location(owner.post("/rules/backup", Map.of()));
    assertTrue(owner.get("/rules").body().contains("Backed up and checked"));
    try (var files = Files.list(folder.resolve("backups"))) {
      assertEquals(1, files.count());
    }
    Visit.location(owner.post("/rules/verify", Map.of()));
    assertTrue(owner.get("/rules").body().contains("The record is whole"));
  }
}
