package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.record.ShopDay;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against {@code java.time}, through a year and both changes of the clocks in it. */
class ShopDaysTest {
  @Test
  void aTimeIsOfTheDayThatItWasInTheShop() {
    for (String id : List.of("America/New_York", "Pacific/Auckland", "Asia/Kolkata", "UTC")) {
      ZoneId zone = ZoneId.of(id);
      ShopDays days = new ShopDays(zone);
      Instant end = Instant.parse("2027-01-01T00:00:00Z");
      for (Instant t = Instant.parse("2026-01-01T00:00:01Z");
          t.isBefore(end);
          t = t.plusSeconds(900)) {
        assertEquals(LocalDate.ofInstant(t, zone), days.of(t.toString()), id + " " + t);
      }
    }
  }

  /** Old books know days and no times: a day stays what it is, west of Greenwich too. */
  @Test
  void aDayWithoutATimeIsThatDayEverywhere() {
    ShopDays west = new ShopDays(ZoneId.of("America/New_York"));
    LocalDate day = LocalDate.of(2026, 11, 29);
    assertEquals(day, west.of("2026-11-29"));
    assertEquals(day, west.of("2026-11-29T00:00:00Z"));
    assertEquals(day, west.of("2026-11-29T00:00:00.000000Z"));
    assertEquals(day.minusDays(1), west.of("2026-11-29T00:00:00.000001Z"));
    for (String at :
        List.of("2026-11-29T00:00:00Z", "2026-11-29T00:00:00.000001Z", "2026-11-29T04:59:59Z")) {
      assertEquals(west.of(at), ShopDay.of(Instant.parse(at), ZoneId.of("America/New_York")), at);
    }
  }
}
