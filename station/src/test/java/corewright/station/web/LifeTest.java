package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class LifeTest {
  private final HostileShop.Made made = HostileShop.shared();
  private final Visit visit = HostileShop.owner();

  LifeTest() throws IOException {}

  @Test
  void tellsAWholeLifeOnOnePageAndWhatIsNext() {
    String page = visit.get("/unit/" + made.tag()).body();
    assertTrue(page.contains("Tested as received, run 1: FAIL"), page);
    assertTrue(page.contains("/did/" + made.run()), page);
    assertTrue(page.contains("What it did"), "one curve is no overlay: " + page);
    String untested = visit.get("/unit/" + made.untested()).body();
    assertTrue(untested.contains("href=\"/build/" + made.untested()), "received comes first");
    assertTrue(untested.contains("not tested yet"), untested);
  }

  @Test
  void noTextOfTheRecordBecomesPartOfThePage() {
    String page = visit.get("/unit/" + made.tag()).body();
    assertFalse(page.contains(HostileShop.SCRIPT), page);
    assertFalse(page.contains("<img src=x"), page);
    assertTrue(page.contains("&lt;script&gt;"), page);
  }

  @Test
  void refusesWhatIsNoUnitAndDrawsOnlyWhatHasCurves() {
    for (String tag : new String[] {"..%2f..%2fledger.db", "U-000020", "%00", "x%22"}) {
      int status = visit.get("/unit/" + tag).statusCode();
      assertTrue(status == 422 || status == 400 || status == 404, tag + ": " + status);
    }
    assertEquals(422, visit.get("/unit/" + made.untested() + "/picture").statusCode());
    assertEquals(200, visit.get("/unit/" + made.tag() + "/picture").statusCode());
  }
}
