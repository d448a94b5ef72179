package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.life.ClaimFacts.Term;
import corewright.bench.life.Life;
import corewright.bench.life.Stage;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.Standing;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The ledger's times are UTC, a day is the shop's own: New York is 5 h behind, Auckland 13 ahead.
 */
class DaysHereTest {
  private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
  private static final ZoneId AUCKLAND = ZoneId.of("Pacific/Auckland");

  @Test
  void aWarrantyEndsWithItsLastDayWhereTheShopIs() {
    assertEquals(Term.IN, Claiming.term(claim("2026-11-30T04:59:00.000000Z"), NEW_YORK));
    assertEquals(Term.OUT, Claiming.term(claim("2026-11-30T05:01:00.000000Z"), NEW_YORK));
    assertEquals(Term.IN, Claiming.term(claim("2026-11-29T10:59:00.000000Z"), AUCKLAND));
    assertEquals(Term.OUT, Claiming.term(claim("2026-11-29T11:01:00.000000Z"), AUCKLAND));
  }

  /** Common practice of old books, no source: a day, and no time. */
  @Test
  void aDayWithoutATimeIsThatDayInDenverToo() {
    ZoneId denver = ZoneId.of("America/Denver");
    assertEquals(
        LocalDate.parse("2019-03-04"), WallClock.day("2019-03-04T00:00:00.000000Z", denver));
    assertEquals(
        LocalDate.parse("2019-03-03"), WallClock.day("2019-03-04T00:00:00.000001Z", denver));
  }

  @Test
  void whatCameThisEveningCameToday() {
    LocalDate today = LocalDate.parse("2026-11-29");
    assertEquals(0, InWork.age_days(since("2026-11-30T01:00:00.000000Z"), today, NEW_YORK));
    assertEquals(0, InWork.age_days(since("2026-11-28T20:00:00.000000Z"), today, AUCKLAND));
  }

  private static Claim claim(String opened) {
    return new Claim("U-00418Q", 1, 1, opened, "stalls when warm", "2026-11-29", "", "", "");
  }

  private static Standing since(String at) {
    Life life = new Life(Stage.RECEIVED, Optional.empty(), false);
    return new Standing("U-00418Q", 1, life, at, "", "", "", "");
  }
}
