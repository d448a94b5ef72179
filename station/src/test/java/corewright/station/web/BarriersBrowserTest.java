package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every place in both modes and on a phone, looked at by axe-core (by others, 4.11). */
class BarriersBrowserTest {
  @Test
  void noPlaceHasASeriousBarrier() throws IOException {
    HostileShop.Made made = HostileShop.shared();
    Visit visit = HostileShop.owner();
    try (Browser browser = Browser.open()) {
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
        for (String path : of(made)) {
          browser.go(visit.at(path));
          look(browser, mode + " " + path, found);
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

  /** What a place shows of one unit, one run, one family. */
  private static List<String> of(HostileShop.Made made) {
    String tag = made.tag();
    return List.of(
        "/unit/" + tag,
        "/did/" + made.run(),
        "/decide/" + tag,
        "/rebuild/" + tag,
        "/handover/" + tag,
        "/counter/" + tag,
        "/photograph/" + tag,
        "/build/" + made.untested(),
        "/build/" + made.untested() + "/condition",
        "/rules/family/sd48");
  }

  private static void look(Browser browser, String where, List<String> found) {
    browser.barriers().forEach(b -> found.add(where + " " + b));
  }
}
