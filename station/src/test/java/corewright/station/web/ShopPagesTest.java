package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ShopPagesTest {
  private final HostileShop.Made made = HostileShop.shared();
  private final Visit visit = HostileShop.owner();

  ShopPagesTest() throws IOException {}

  /** One of one: Wilson's interval reaches down to n/(n + z²) = 1/4.8415 = 21 %. */
  @Test
  void showsFiguresWithTheirIntervalAndTheUnitsBehindThem() {
    String page = counted();
    assertTrue(page.contains("Faults confirmed by opening"), page);
    assertTrue(page.contains("21 to 100 %"), page);
    Matcher link = Pattern.compile("href=\"(/shop/behind[^\"]*)\">1 of 1<").matcher(page);
    assertTrue(link.find(), page);
    String behind = visit.get(link.group(1).replace("&amp;", "&")).body();
    assertTrue(behind.contains("/unit/" + made.tag()), behind);
    assertFalse(behind.contains("/unit/" + made.untested()), behind);
    assertTrue(page.contains("In work today"), page);
    assertTrue(page.contains("<a href=\"/shop/find?stage=RECEIVED\">"), page);
    assertEquals(
        422,
        visit.get("/shop?from=2026-12-01&until=2026-01-01").statusCode(),
        "the wrong way round");
  }

  /** On a busy machine the figures may not be there at the first look. */
  private String counted() {
    String page = visit.get("/shop").body();
    for (int i = 0; i < 30 && page.contains("are being counted"); i++) {
      page = visit.get("/shop").body();
    }
    return page;
  }

  @Test
  void findsUnitsByWhatIsKnownOfThem() {
    String failed = visit.get("/shop/find?verdict=FAIL").body();
    assertTrue(failed.contains("/unit/" + made.tag()), failed);
    assertFalse(failed.contains("/unit/" + made.untested()), failed);
    assertTrue(visit.get("/shop/find?stage=RECEIVED").body().contains(made.untested()));
    assertTrue(visit.get("/shop/find?lot=NONE-1").body().contains("No unit is like that"));
    assertEquals(422, visit.get("/shop/find").statusCode());
    assertEquals(422, visit.get("/shop?from=yesterday").statusCode());
    counted();
    assertEquals(422, visit.get("/shop/behind?of=yield&row=-1").statusCode());
  }

  @Test
  void noTextOfTheRecordOrOfTheQuestionBecomesPartOfThePage() {
    counted();
    for (String path :
        new String[] {
          "/shop",
          "/shop/find?verdict=FAIL&person=%3Cscript%3Ealert('1')%3C/script%3E",
          "/shop/find?stage=RECEIVED",
          "/shop/behind?of=faults&row=0"
        }) {
      String page = visit.get(path).body();
      assertFalse(page.contains(HostileShop.SCRIPT), path);
      assertFalse(page.contains("<img src=x"), path);
    }
  }
}
