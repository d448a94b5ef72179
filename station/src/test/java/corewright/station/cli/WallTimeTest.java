package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Offsets of the IANA time zone database: +1 h in winter, +2 h in summer; none in UTC. */
class WallTimeTest {
  @ParameterizedTest
  @CsvSource({
    "2026-11-25T07:13:31.050287994Z, Europe/Berlin, 2026-11-25 08:13 CET",
    "2026-07-01T22:30:00Z, Europe/Berlin, 2026-07-02 00:30 CEST",
    "2026-11-25T07:13:31Z, UTC, 2026-11-25 07:13 UTC",
    "2019-03-04T00:00:00Z, America/Denver, 2019-03-04",
    "2019-03-04T00:00:01Z, America/Denver, 2019-03-03 17:00 MST"
  })
  void isToldWithItsZoneAndNoFractions(Instant at, String zone, String words) {
    assertEquals(words, new WallTime(ZoneId.of(zone)).words(at));
  }
}
