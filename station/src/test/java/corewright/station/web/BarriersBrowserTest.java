package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every place and every page, in both modes, looked at by axe-core (by others, 4.11). Not here, but
 * in the tests of their own: the bench that runs, an open claim, a dropped file.
 */
class BarriersBrowserTest {
  private static final String BENCH = "/bench/practice-sd48";

  @TempDir private Path empty;

  @Test
  void noPageHasASeriousBarrier() throws IOException {
    HostileShop.Made made = HostileShop.shared();
    Visit visit = HostileShop.owner();
    try (Browser browser = Browser.open();
        Visit first = Visit.to(empty)) {
      List<String> found = new ArrayList<>();
      look(browser, first, "/first", found);
      look(browser, visit, "/in", found);
      browser.signIn(visit);
      for (PlaceName place : PlaceName.values()) {
        look(browser, visit, place.path(), found);
      }
      for (String path : of(made)) {
        look(browser, visit, path, found);
      }
      for (String path : practised(visit)) {
        look(browser, visit, path, found);
      }
      browser.size(390, 844);
      look(browser, visit, "/counter", found);
      browser.size(1366, 768);
      browser.one("form[action='/mode'] button").click();
      browser.until(
          () -> "dark".equals(browser.one("html").getDomAttribute("data-mode")), "turned");
      assertEquals(List.of(), found, () -> String.join("\n", found));
    }
  }

  /** What a place shows of one unit, one run, one family, one question; and what it does not. */
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
        "/rules/family/sd48",
        "/rules/check?file=profiles/families/sd48/sd48-ship.json",
        "/shop/find?verdict=FAIL",
        "/shop/behind?of=faults&row=0",
        "/decide/U-99999",
        "/nowhere");
  }

  /** A unit on a bench to practise on, what is read of it by hand, and what is asked afterwards. */
  private static List<String> practised(Visit visit) throws IOException {
    visit.get("/practice");
    String ready = Visit.location(visit.post("/practice/take", Map.of("family", "sd48")));
    String tag = ready.substring(ready.indexOf('=') + 1);
    visit.get(ready);
    visit.post(BENCH + "/prepare", Map.of("tag", tag, "profile", "sd48-final", "cautions", "yes"));
    HostileShop.tested(visit.console().house().workshop().folders().root(), tag);
    return List.of(BENCH, BENCH + "/hand", "/practice/" + tag);
  }

  private static void look(Browser browser, Visit visit, String path, List<String> found) {
    browser.go(visit.at(path));
    browser.barriers().forEach(b -> found.add(path + " " + b));
  }
}
