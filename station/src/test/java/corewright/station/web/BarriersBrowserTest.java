package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every place in both modes and on a phone, looked at by axe-core (by others, 4.11). */
class BarriersBrowserTest {
  @TempDir private Path shop;

  @Test
  void noPlaceHasASeriousBarrier() {
    try (Visit visit = Visit.asOwner(shop);
        Browser browser = Browser.open()) {
      List<String> found = new ArrayList<>();
      browser.go(visit.at("/in"));
      look(browser, "/in", found);
      browser.signIn(visit);
      for (String mode : List.of("light", "dark")) {
        browser.size(1366, 768);
        for (PlaceName place : PlaceName.values()) {
          browser.go(visit.at(place.path()));
          look(browser, mode + " " + place.path(), found);
        }
        browser.size(390, 844);
        browser.go(visit.at("/counter"));
        look(browser, mode + " /counter on a phone", found);
        browser.size(1366, 768);
        browser.go(visit.at("/"));
        browser.one("form[action='/mode'] button").click();
        String other = mode.equals("light") ? "dark" : "light";
        browser.until(
            () -> other.equals(browser.one("html").getDomAttribute("data-mode")), "turned");
      }
      assertEquals(List.of(), found, () -> String.join("\n", found));
    }
  }

  private static void look(Browser browser, String where, List<String> found) {
    browser.barriers().forEach(b -> found.add(where + " " + b));
  }
}
