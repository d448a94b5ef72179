package corewright.station.web.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.station.web.Browser;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/**
 * A core is received, identified, put on the bench and stopped by somebody without a mouse (WCAG
 * 2.2, 2.1.1 and 2.4.7): Tab, Enter, arrows, Space, a scanner, Esc.
 */
@Timeout(180)
class KeysBrowserTest {
  private static final int MOST_TABS = 90;
  private static final int TAB = 9;
  private static final int ENTER = 13;

  @TempDir private Path shop;

  @Test
  void fromTheDoorToAStopWithoutAMouse() throws Exception {
    Files.writeString(
        shop.resolve("shop.json"),
        "{\"name\":\"Mill Yard Rebuild\",\"address\":\"4 Mill Yard\",\"invented\":true}");
    try (Visit visit = Visit.asOwner(shop);
        Browser browser = Browser.open()) {
      browser.go(visit.at("/in"));
      tabTo(browser, "#name");
      keys(browser, Visit.OWNER, Keys.TAB, Visit.PASSWORD, Keys.ENTER);
      browser.until(() -> browser.driver().getCurrentUrl().equals(visit.at("/")), "in");

      tabTo(browser, "nav a[href='/counter']");
      keys(browser, Keys.ENTER);
      browser.until(() -> !browser.all("#serial").isEmpty(), "the counter");
      assertEquals("serial", focused(browser).getDomAttribute("id"), "ready for the scanner");
      keys(browser, "4417-0312", Keys.ENTER); // as fast as a scanner
      assertEquals("label", focused(browser).getDomAttribute("id"), "the next thing to scan");
      tabTo(browser, "#family");
      keys(browser, "sd");
      tabTo(browser, "input[name=mode]");
      keys(browser, Keys.ARROW_RIGHT);
      tabTo(browser, "input[name=grade]");
      keys(browser, Keys.SPACE, Keys.ARROW_RIGHT);
      tabTo(browser, ".go .btn");
      keys(browser, Keys.ENTER);
      browser.until(() -> browser.driver().getCurrentUrl().contains("/counter/U-"), "received");

      tabTo(browser, "a[href^='/build/']");
      keys(browser, Keys.ENTER);
      browser.until(() -> !browser.all("#ask").isEmpty(), "asked which build");
      while (!browser.text("#ask").equals("Nothing more to look at")) {
        String asked = browser.text("#ask");
        String cue = browser.one("input[name=cue]").getDomAttribute("value");
        String a2 = Map.of("bosses", "6", "connector", "2-row grey").getOrDefault(cue, "not seen");
        tabTo(browser, "button[value='" + (cue.equals("potting") ? "soft gel" : a2) + "']");
        keys(browser, Keys.ENTER);
        browser.until(() -> !browser.text("#ask").equals(asked), "asked the next one");
      }
      tabTo(browser, "a[href^='/bench?tag=']");
      keys(browser, Keys.ENTER);
      browser.until(() -> !browser.all("#cautions").isEmpty(), "the bench");
      tabTo(browser, "#cautions");
      keys(browser, Keys.SPACE);
      browser.until(() -> !browser.all("#start").isEmpty(), "every guard held");
      tabTo(browser, "#start");
      key(browser, "keyDown", "Enter", ENTER);
      browser.until(() -> !browser.all("#bigplate").isEmpty(), "held for a second, started");
      browser.until(
          () -> browser.text("#volts").matches("4\\d\\..*"),
          "energised, and seen live at its output");
      assertEquals("ENERGISED", browser.text("#word"));
      keys(browser, Keys.ESCAPE);
      browser.until(() -> browser.text("#how").contains("pressed STOP"), "stopped");
      browser.until(() -> browser.text("#word").equals("NOT ENERGISED"), "safe");
    }
    try (Workshop workshop = Visit.workshop(shop)) {
      RunRecord run = workshop.ledger().dossier("U-000012").runs().get(0);
      assertEquals(RunEnd.Kind.STOPPED, run.end().kind());
    }
  }

  /** Goes on by Tab until the focus, which must be seen, is on what the selector means. */
  private static void tabTo(Browser browser, String selector) {
    for (int tab = 0; tab < MOST_TABS; tab++) {
      if (is(browser, "return document.activeElement.matches(\"" + selector + "\")")) {
        assertTrue(isSeen(browser), selector + " has no visible focus");
        return;
      }
      key(browser, "rawKeyDown", "Tab", TAB);
    }
    throw new AssertionError("no Tab leads to " + selector + "\n" + browser.text("body"));
  }

  /** An outline round it or round what stands for it, as the label of a chip. */
  private static boolean isSeen(Browser browser) {
    return is(
        browser,
        "let e = document.activeElement; for (let i = 0; i < 2 && e; i++, e = e.parentElement) {"
            + " const s = getComputedStyle(e); if (s.outlineStyle !== 'none' &&"
            + " parseFloat(s.outlineWidth) > 1) return true; } return false;");
  }

  private static boolean is(Browser browser, String script) {
    return Boolean.TRUE.equals(browser.driver().executeScript(script));
  }

  private static WebElement focused(Browser browser) {
    return browser.driver().switchTo().activeElement();
  }

  private static void keys(Browser browser, CharSequence... keys) {
    new Actions(browser.driver()).sendKeys(keys).perform();
  }

  private static void key(Browser browser, String how, String key, int code) {
    browser
        .driver()
        .executeCdpCommand(
            "Input.dispatchKeyEvent",
            Map.of("type", how, "key", key, "code", key, "windowsVirtualKeyCode", code));
  }
}
