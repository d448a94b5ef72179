package corewright.station.web.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Act;
import corewright.bench.life.Life;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.station.demo.SampleBench;
import corewright.station.web.Browser;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** One core, with nothing but the screen: from the counter to its specimen certificate. */
@Timeout(400)
class WayOfACoreBrowserTest {
  private static final String TAG = "U-00004V";
  private static final String BENCH = "/bench/emulated-sd48";

  /** A run takes 5 s on an idle machine; this is for one that is not. */
  private static final Duration RUN = Duration.ofSeconds(90);

  private static final int MOST_RUNS = 5;

  @TempDir private Path shop;

  @Test
  void fromTheCounterToTheSpecimenCertificate() throws Exception {
    assertEquals(
        "its power stage is weak", SampleBench.truth(TAG), "the unit follows from its tag");
    Files.writeString(
        shop.resolve("shop.json"),
        "{\"name\":\"Mill Yard Rebuild\",\"address\":\"4 Mill Yard\",\"invented\":true}");
    try (Workshop workshop = Visit.workshop(shop)) {
      for (int before = 1; before < 4; before++) {
        workshop.ledger().nextTag();
      }
    }
    try (Visit visit = Visit.asOwnerInHaste(shop);
        Browser browser = Browser.open()) {
      browser.signIn(visit);
      received(browser, visit);
      identified(browser);
      tested(browser, visit, "FAIL");
      decided(browser, visit);
      rebuilt(browser, visit);
      tested(browser, visit, "PASS");
      browser.go(visit.at("/handover/" + TAG));
      assertTrue(browser.text("main").contains("EMULATED. What is written of it is a specimen"));
      assertEquals(List.of(), browser.barriers());
      press(browser, "button[value=certificate]");
      browser.until(
          () -> browser.driver().getCurrentUrl().contains("/papers/" + TAG), "the specimen opened");
      provesNothing();
      claimed(browser, visit);
    }
  }

  private void provesNothing() {
    try (Workshop workshop = Visit.workshop(shop)) {
      List<RunRecord> runs = workshop.ledger().dossier(TAG).runs();
      RunRecord last = runs.get(runs.size() - 1);
      assertEquals(Source.EMULATED, last.source());
      assertEquals("ship", last.purpose());
      assertEquals(Verdict.PASS, last.judgement().verdict().orElseThrow());
      Life life = workshop.ledger().lives().standing(TAG).life();
      assertTrue(life.after(Act.SEAL).isEmpty(), "what an emulated bench shows proves nothing");
    }
  }

  /** On a real bench it would have left, and come back. */
  private void claimed(Browser browser, Visit visit) {
    Bench.passes(shop, TAG, Source.BENCH);
    visit.get("/handover/" + TAG);
    visit.post("/handover/" + TAG + "/seal", Map.of("number", "8120", "mark", "under rib 3"));
    visit.post("/handover/" + TAG + "/ship", Map.of("carrier", "post", "tracking", "0034"));
    Map<String, String> claim = Map.of("unit", TAG, "symptom", "dies when hot", "hours", "120");
    assertEquals("/cameback/" + TAG, Visit.location(visit.post("/cameback", claim)));
    browser.go(visit.at("/cameback/" + TAG));
    assertEquals(List.of(), browser.barriers());
    Map<String, String> back = CounterTest.core("0698-114");
    back.put("unit", TAG);
    Visit.location(visit.post("/counter", back));
    browser.go(visit.at("/cameback/" + TAG));
    assertTrue(browser.text("main").contains("Is it our unit"), browser.text("main"));
    assertEquals(List.of(), browser.barriers());
  }

  /** A refusal leaves everything that was typed; axe-core finds nothing serious on the way. */
  private static void received(Browser browser, Visit visit) {
    browser.go(visit.at("/counter"));
    slowly(browser.one("#serial"), "0698-114");
    slowly(browser.one("#label"), "SD 12/48 0698-B");
    browser.one("#family option[value=sd48]").click();
    slowly(browser.one("#quote"), "R-9");
    browser.one("input[name=mode][value=exchange]").click();
    browser.one("input[name=grade][value=B]").click();
    browser.one("input[name=missing][value=seal]").click();
    press(browser, ".go .btn");
    browser.until(() -> browser.text("#message").contains("R-9"), "refused above the form");
    assertEquals("0698-114", browser.one("#serial").getDomProperty("value"));
    assertTrue(browser.one("input[name=missing][value=seal]").isSelected(), "nothing is lost");
    browser.one("#quote").clear();
    press(browser, ".go .btn");
    browser.until(() -> browser.driver().getCurrentUrl().endsWith("/counter/" + TAG), "received");
    assertEquals(List.of(), browser.barriers());
  }

  /** As somebody with an A2 in their hands answers; see the family's file. */
  private static void identified(Browser browser) {
    press(browser, ".wn .btn");
    browser.until(() -> !browser.all("#ask").isEmpty(), "asked");
    assertEquals(List.of(), browser.barriers());
    while (!browser.text("#ask").equals("Nothing more to look at")) {
      String asked = browser.text("#ask");
      String cue = browser.one("input[name=cue]").getDomAttribute("value");
      String a2 =
          switch (cue) {
            case "bosses" -> "6";
            case "connector" -> "2-row grey";
            case "potting" -> "soft gel";
            case "partNumber" -> "SD48-20";
            default -> "not seen";
          };
      press(browser, "button[name=answer][value='" + a2 + "']");
      browser.until(() -> !browser.text("#ask").equals(asked), "asked the next one");
    }
    assertTrue(browser.text("main").contains("It is A2, gel-filled build"));
  }

  /**
   * On a machine that is far overloaded a frame may come too late: the run is VOID, and repeated.
   */
  private static void tested(Browser browser, Visit visit, String verdict) {
    for (int run = 1; run <= MOST_RUNS; run++) {
      browser.go(visit.at(BENCH + "?tag=" + TAG));
      if (browser.all("#start").isEmpty()) {
        browser.one("#cautions").click();
      }
      browser.until(() -> !browser.all("#start").isEmpty(), "every guard held");
      new Actions(browser.driver()).clickAndHold(browser.one("#start")).perform();
      browser.until(() -> !browser.all("#bigplate").isEmpty(), "started");
      browser.until(() -> browser.text("main").contains("The run is over"), "over", RUN);
      browser.until(
          () -> !visit.get("/decide/" + TAG).body().contains("Not decided"), "written down", RUN);
      if (visit.get("/decide/" + TAG).body().contains("<b>" + verdict + "</b>")) {
        return;
      }
    }
    throw new AssertionError("never " + verdict + ": " + browser.text("main"));
  }

  private static void decided(Browser browser, Visit visit) {
    browser.go(visit.at("/decide/" + TAG));
    if (browser.all("a[href='/rebuild/" + TAG + "']").isEmpty()) {
      press(browser, "form[action='/decide/" + TAG + "'] .btn");
      browser.until(() -> !browser.all("a[href='/rebuild/" + TAG + "']").isEmpty(), "decided");
    }
    browser.go(visit.at("/did/" + TAG));
    press(browser, ".onward .btn"); // the decision and its reasons, before anything is opened
    browser.until(() -> browser.driver().getCurrentUrl().endsWith("/decide/" + TAG), "led on");
    assertTrue(browser.text("h1").startsWith("REBUILD"), browser.text("h1"));
    assertTrue(browser.text("main").contains("How wrong could we be"));
    assertEquals(List.of(), browser.barriers());
  }

  private static void rebuilt(Browser browser, Visit visit) {
    visit.post("/rebuild", Map.of("lot", "LOT-7", "part", "Gate driver", "quantity", "2"));
    press(browser, ".doing a.btn");
    browser.until(() -> !browser.all("input[name=read]").isEmpty(), "the cautions");
    browser.one("input[name=read]").click();
    press(browser, "form[action$='/open'] .btn");
    browser.until(() -> !browser.all("#place1").isEmpty(), "open");
    slowly(browser.one("#place1"), "Q2");
    browser.one("#lot1 option[value='LOT-7']").click();
    slowly(browser.one("#removed1"), "gate short");
    press(browser, "form[action$='/work'] .btn");
    browser.until(() -> browser.text("main").contains("gate short"), "written down");
    assertEquals(List.of(), browser.barriers());
    press(browser, "form[action$='/close'] .btn");
    browser.until(() -> browser.text("main").contains("Test it as shipped"), "closed");
  }

  /**
   * A bar that stays at the foot of the window may cover what is pressed: bring it to the middle.
   */
  private static void press(Browser browser, String selector) {
    WebElement button = browser.driver().findElement(By.cssSelector(selector));
    browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
    button.click();
  }

  /** As a hand types: what comes faster is a scanner's. */
  private static void slowly(WebElement field, String text) {
    for (String key : text.split("")) {
      field.sendKeys(key);
    }
  }
}
