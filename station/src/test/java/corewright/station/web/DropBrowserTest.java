package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file dropped on a page of a browser, and what is said of it looked at by axe-core. */
class DropBrowserTest {
  @TempDir private Path folder;

  @Test
  void aLogDroppedOnAPageIsReadAndNoPageOfAFileHasASeriousBarrier() throws IOException {
    HostileShop.Made made = HostileShop.shared();
    Visit visit = HostileShop.owner();
    Path log = Files.writeString(folder.resolve("drive.csv"), DroppedTest.log("Output (V)"));
    try (Browser browser = Browser.open()) {
      browser.signIn(visit);
      browser
          .driver()
          .executeScript(
              "const text = arguments[0], all = new DataTransfer();"
                  + "all.items.add(new File([text], 'drive.csv'));"
                  + "document.body.dispatchEvent(new DragEvent('drop',"
                  + " {dataTransfer: all, bubbles: true, cancelable: true}));",
              Files.readString(log));
      browser.until(() -> browser.text("h1").contains("supports a fault"), "read");
      String dropped = browser.driver().getCurrentUrl();
      assertEquals(
          Boolean.TRUE,
          browser.driver().executeScript("return document.querySelector('.curves').complete"));
      List<String> found = new ArrayList<>();
      browser.barriers().forEach(b -> found.add(dropped + " " + b));
      for (String text : List.of(HostileShop.weak(), "nothing of the kind")) {
        String before = browser.driver().getCurrentUrl();
        browser.driver().executeScript("bring(new File([arguments[0]], 'x.csv'))", text);
        browser.until(() -> !browser.driver().getCurrentUrl().equals(before), "another file came");
        browser.barriers().forEach(b -> found.add(browser.text("h1") + " " + b));
      }
      browser.size(390, 844);
      for (String page : List.of("/did/" + made.run(), "/unit/" + made.tag())) {
        browser.go(visit.at(page));
        browser.barriers().forEach(b -> found.add("on a phone " + page + " " + b));
      }
      assertEquals(List.of(), found, () -> String.join("\n", found));
      assertTrue(
          browser.all("img").stream().allMatch(i -> !"x".equals(i.getDomAttribute("src"))),
          "a text of the record became a picture");
    }
  }
}
