package corewright.station.web.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.reports.ledger.Agreements;
import corewright.reports.ledger.Money;
import corewright.reports.ledger.Tags;
import corewright.reports.ledger.VisitFact;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A core comes over the counter: once, and never asked for again what is known of it. */
class CounterTest {
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

  @Test
  void aCoreIsReceivedWithItsConditionAndItsSerialIsNeverAskedTwice() throws Exception {
    String form = visit.get("/counter").body();
    assertTrue(form.contains("It may hold charge"), "the caution stands beside every core");
    assertTrue(form.contains("value=\"sd48\""), form);

    Map<String, String> core = core("0698-114");
    core.remove("grade");
    assertTrue(refusal(visit.post("/counter", core)).contains("Choose A to X"));
    core.put("grade", "B");
    core.put("symptom/when", "cold");
    String tag = received(visit, core);
    assertTrue(Tags.isValid(tag), "the check character is ISO/IEC 7064's: " + tag);
    String page = visit.get("/counter/" + tag).body();
    assertTrue(page.contains("grade B"), page);
    assertTrue(visit.get("/counter/known?serial=0698%20114").body().contains("is here already"));
    assertFalse(visit.get("/counter/known?serial=0698").body().contains("is here already"));

    String again = refusal(visit.post("/counter", core));
    assertTrue(again.contains("Serial 0698-114 is known: " + tag), again);
    core.put("namesake", "yes");
    assertNotEquals(tag, received(visit, core), "another unit with the same serial");
    assertTrue(refusal(visit.get("/counter?tag=" + tag)).contains("is here already"));
    try (Workshop workshop = Visit.workshop(shop)) {
      assertEquals("B", workshop.ledger().lives().standing(tag).grade());
      assertEquals("cold", workshop.ledger().dossier(tag).answers().get(0).answer());
      assertTrue(workshop.ledger().customers().contains("Orrel Plant Hire"));
    }
  }

  @Test
  void whatWasTypedSurvivesARefusalAndACrash() throws Exception {
    visit.get("/counter");
    visit.post("/draft/counter", Map.of("serial", "<b>7&7</b>", "complaint", "dies when hot"));
    String form = visit.get("/counter").body();
    assertTrue(form.contains("value=\"&lt;b>7&amp;7&lt;/b>\""), "kept, and no markup");
    assertTrue(form.contains("dies when hot</textarea>"), form);
    assertTrue(visit.get("/counter?serial=A-9").body().contains("value=\"A-9\""), "a scan wins");
    received(visit, core("D-1"));
    assertFalse(visit.get("/counter").body().contains("dies when hot"), "sent, so gone");
  }

  @Test
  void aPhotographIsKeptUnderItsHashAndWhatIsNoneIsRefusedBeforeAnythingIsWritten()
      throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB), "png", out);
    byte[] png = out.toByteArray();
    visit.get("/counter");
    HttpResponse<String> program =
        visit.upload("/counter", core("S-1"), "photo-label", "label.png", "MZ\0\0".getBytes());
    assertTrue(refusal(program).contains("is none"), program.body());
    HttpResponse<String> huge =
        visit.upload("/counter", core("S-1"), "photo-label", "l.png", new byte[11_000_000]);
    assertTrue(huge.statusCode() == 422 || huge.statusCode() == 413, huge.body());
    assertTrue(
        visit.get("/scan?code=S-1").body().contains("Nothing is known"), "nothing was received");

    visit.get("/counter");
    String at =
        Visit.location(visit.upload("/counter", core("S-1"), "photo-label", "../../x.png", png));
    String hash = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(png));
    assertTrue(visit.get(at).body().contains("/photos/" + hash), "shown on its page");
    HttpResponse<String> photo = visit.get("/photos/" + hash);
    assertEquals("image/png", photo.headers().firstValue("Content-Type").orElse(""));
    assertEquals("nosniff", photo.headers().firstValue("X-Content-Type-Options").orElse(""));
    assertTrue(Files.isRegularFile(shop.resolve("files").resolve(hash)));
    assertEquals(404, visit.get("/photos/..%2Fledger.db").statusCode());
  }

  @Test
  void whatWasOfferedUnderANumberIsNotAskedAgainWhenTheParcelComes() throws Exception {
    String number;
    try (Workshop workshop = Visit.workshop(shop)) {
      Money none = new Money(0, "EUR");
      Agreements.Quote offer =
          new Agreements.Quote(
              "Harrow Lane", "exchange", "pv65", none, none, none, workshop.today(), "no start");
      number = workshop.ledger().agreements().quote(offer, Visit.OWNER).number();
    }
    String form = visit.get("/counter?quote=" + number).body();
    assertTrue(form.contains("value=\"Harrow Lane\""), form);
    assertTrue(form.contains("<option value=\"pv65\" selected>"), form);
    assertTrue(form.contains("value=\"exchange\" required checked"), form);
    Map<String, String> core = core("Q-1");
    core.put("quote", number);
    LocalDate day;
    try (Workshop workshop = Visit.workshop(shop)) {
      day = workshop.today().plusDays(9);
    }
    core.put("promised", day.minusYears(1).toString());
    assertTrue(refusal(visit.post("/counter", core)).contains("Promise a day to come"));
    core.put("promised", "soon");
    assertTrue(refusal(visit.post("/counter", core)).contains("'soon' is no day"));
    core.put("promised", day.toString());
    String tag = received(visit, core);
    try (Workshop workshop = Visit.workshop(shop)) {
      assertEquals(tag, workshop.ledger().agreements().get(number).tag());
      assertEquals(
          List.of(Optional.of(day)),
          workshop.ledger().facts().visits().stream()
              .filter(fact -> fact.tag().equals(tag))
              .map(VisitFact::promised)
              .toList());
    }
  }

  @Test
  void theTagIsPrintedAndPapersAreNamedNeverPathed() throws Exception {
    visit.get("/counter");
    String at = "/counter/" + received(visit, core("P-1"));
    String silent = refusal(visit.post(at + "/label", Map.of("serial", "P-7")));
    assertTrue(silent.contains("nobody said why"), silent);
    Map<String, String> why = Map.of("serial", "P-7", "because", "a 7 that looked like a 1");
    assertEquals(at, Visit.location(visit.post(at + "/label", why)));
    assertTrue(visit.get(at).body().contains("serial P-7,"), "from now on");
    assertTrue(refusal(visit.post(at + "/tag", Map.of("size", "1x1"))).contains("Choose one of"));
    String paper = Visit.location(visit.post(at + "/tag", Map.of("size", "62x29")));
    HttpResponse<String> pdf = visit.get(paper);
    assertTrue(pdf.body().startsWith("%PDF-"), paper);
    assertTrue(
        pdf.headers().firstValue("Content-Disposition").orElse("").startsWith("inline; filename"));
    for (String other :
        new String[] {"..%2Fledger.db", "..%2F..%2Fshop.json", "x.pdf", "%2e%2e%2fa.pdf", ".pdf"}) {
      assertEquals(404, visit.get("/papers/" + other).statusCode(), other);
    }
  }

  @Test
  void everybodyReceivesAndNobodyIsReceivedTwice() throws Exception {
    Visit counter = visit.colleague("C. Bell", Role.COUNTER);
    counter.get("/counter");
    String tag = received(counter, core("C-1"));
    Map<String, String> back = core("C-1");
    back.put("unit", tag);
    assertTrue(refusal(counter.post("/counter", back)).contains("was received before"));
  }

  /** Receives a core; says which tag it got. */
  static String received(Visit visit, Map<String, String> core) {
    visit.get("/counter");
    String at = Visit.location(visit.post("/counter", core));
    return at.substring(at.lastIndexOf('/') + 1);
  }

  static Map<String, String> core(String serial) {
    Map<String, String> fields = new HashMap<>();
    fields.put("family", "sd48");
    fields.put("serial", serial);
    fields.put("label", "SD 12/48 0698-B");
    fields.put("customer", "Orrel Plant Hire");
    fields.put("mode", "repair");
    fields.put("grade", "B");
    fields.put("complaint", "no start");
    return fields;
  }

  static String refusal(HttpResponse<String> answer) {
    assertEquals(422, answer.statusCode(), answer.body());
    return answer.body();
  }
}
