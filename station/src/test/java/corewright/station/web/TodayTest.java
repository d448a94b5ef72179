package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TodayTest {
  private final HostileShop.Made made = HostileShop.shared();
  private final Visit visit = HostileShop.owner();

  TodayTest() throws IOException {}

  /** A unit that nobody identified, one that was tested and decided, an offer that ends today. */
  @Test
  void saysInWordsHowManyThingsNeedSomeoneAndWhereEachIsDone() {
    String page = visit.get("/").body();
    assertTrue(page.contains("Three things need someone"), page);
    assertTrue(page.contains("href=\"/build/" + made.untested()), page);
    assertTrue(page.contains("Ring the customer"), page);
    assertTrue(page.contains("due today"), page);
    assertTrue(page.indexOf("Ring the customer") < page.indexOf("See which build"), page);
    assertFalse(page.contains(HostileShop.SCRIPT), page);
    assertFalse(page.contains("<img src=x"), page);
  }

  @Test
  void hangsWhatWasTestedTodayFromTheWorkingDay() {
    String page = visit.get("/").body();
    assertTrue(page.contains("class=\"dayw\""), page);
    assertTrue(page.contains(" " + made.tag() + "</text>"), page);
    List<String> nothing =
        Stream.of("NaN", "Infinity")
            .filter(page.substring(page.indexOf("dayw"))::contains)
            .toList();
    assertEquals(List.of(), nothing);
  }
}
