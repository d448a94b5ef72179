package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.station.demo.SampleCore;
import corewright.station.web.Browser;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.interactions.Actions;

/** The whole of one run in a browser, with colleagues at other ones. */
@Timeout(180)
class BenchBrowserTest {
  private static final String BENCH = "/bench/emulated-sd48";

  @TempDir private Path shop;

  @Test
  void heldToStartWatchedByOthersAndStoppedByWhoeverSeesIt() throws Exception {
    Files.writeString(
        shop.resolve("shop.json"),
        "{\"name\":\"Mill Yard Rebuild\",\"address\":\"4 Mill Yard\",\"invented\":true}");
    String tag;
    try (Workshop workshop = Visit.workshop(shop)) {
      tag = SampleCore.receive(workshop, "sd48");
    }
    try (Visit visit = Visit.asOwner(shop);
        Relay relay = new Relay(visit.console().port());
        Browser browser = Browser.open()) {
      browser.signIn(visit);
      browser.go(visit.at(BENCH + "?tag=" + tag));
      assertTrue(browser.all("#start").isEmpty(), "absent, not grey, until everything holds");
      assertTrue(browser.text(".gd .ms").contains("Cautions"));
      browser.one("#cautions").click();
      browser.until(() -> !browser.all("#start").isEmpty(), "everything held");

      letGoEarly(browser);
      assertEquals(
          "off", visit.get("/bench/glance").body().replaceAll(".*\"form\":\"(\\w+)\".*", "$1"));
      assertFalse(visit.get("/bench/glance").body().contains("\"stoppable\":true"));

      new Actions(browser.driver()).clickAndHold(browser.one("#start")).perform();
      browser.until(() -> !browser.all("#bigplate").isEmpty(), "started");
      browser.until(() -> browser.text("#word").equals("ENERGISED"), "energised");
      String driver = browser.driver().getWindowHandle();

      Visit counter = visit.colleague("T. Okafor", Role.COUNTER);
      assertEquals(403, counter.post(BENCH + "/start", Map.of()).statusCode());
      Visit technician = visit.colleague("I. Marsh", Role.TECHNICIAN);
      HttpResponse<String> second = technician.post(BENCH + "/start", Map.of());
      assertEquals(422, second.statusCode());
      assertTrue(second.body().contains(Visit.OWNER + " drives emulated-sd48"), second.body());

      browser.driver().switchTo().newWindow(WindowType.TAB);
      browser.go(relay.at(BENCH));
      browser.until(() -> browser.text("#word").equals("ENERGISED"), "watched");
      browser.until(() -> browser.text("#watchers").contains("2 people"), "counted");
      assertTrue(browser.all(".emuword").size() > 0, "says EMULATED");
      assertEquals(List.of(), browser.barriers());
      lostAndFound(browser, relay);
      browser.one("body").sendKeys(Keys.ESCAPE);
      browser.until(
          () -> browser.text("#word").equals("NOT ENERGISED"), "safe where it was stopped");
      browser.driver().switchTo().window(driver);
      browser.until(
          () -> browser.text("#word").equals("NOT ENERGISED"), "safe where it was driven");
      browser.until(() -> browser.text("#how").contains("pressed STOP"), "told who pressed");
      assertEquals(204, counter.post(BENCH + "/stop", Map.of()).statusCode(), "asked again");
      assertEquals(List.of(), browser.barriers());

      try (Workshop workshop = Visit.workshop(shop)) {
        RunRecord run = workshop.ledger().dossier(tag).runs().get(0);
        assertEquals(RunEnd.Kind.STOPPED, run.end().kind());
        assertEquals(Visit.OWNER + " pressed STOP on the console.", run.end().saw());
        assertEquals(List.of(), run.troubles());
      }
      browser.go(visit.at("/"));
      assertEquals("off", browser.one("#plate").getDomAttribute("data-state"));
      visit.console().close();
      browser.until(
          () -> "unknown".equals(browser.one("#plate").getDomAttribute("data-state")),
          "lit when the link was lost");
    }
  }

  /** A page that hears nothing for a second says so, lit; the run goes on, and so does the page. */
  private static void lostAndFound(Browser browser, Relay relay) {
    relay.silence(true);
    browser.until(() -> browser.text("#word").equals("NOT KNOWN"), "lit when nothing came");
    String line = browser.text("#line");
    assertTrue(
        line.matches("Treat as energised\\. No link\\. Last \\d+\\.\\d V, \\d+ s ago\\."), line);
    assertEquals("?", browser.text("#volts"));
    assertTrue(browser.one("#stopform").isDisplayed(), "STOP stays under the hand");
    relay.silence(false);
    browser.until(() -> browser.text("#word").equals("ENERGISED"), "found again by itself");
  }

  /** Letting go within the second starts nothing. */
  private static void letGoEarly(Browser browser) {
    Actions hand = new Actions(browser.driver());
    hand.clickAndHold(browser.one("#start")).perform();
    browser.until(
        () -> browser.one("#jawleft").getDomAttribute("transform") != null, "the jaws moved");
    new Actions(browser.driver()).release().perform();
    browser.until(
        () -> "translate(0 0)".equals(browser.one("#jawleft").getDomAttribute("transform")),
        "the jaws opened again");
  }
}
