package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** Denver is 7 h behind UTC in winter (IANA time zone database). */
class WhenTest {
  @Test
  void aDayFromOldBooksIsThatDayAndHasNoTime() {
    ZoneId denver = ZoneId.of("America/Denver");
    assertEquals("4 Mar 2019", When.moment(Instant.parse("2019-03-04T00:00:00Z"), denver));
    assertEquals("3 Mar 2019, 17:00", When.moment(Instant.parse("2019-03-04T00:00:09Z"), denver));
  }
}
