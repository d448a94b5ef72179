package corewright.station.cli;

import corewright.bench.record.ShopDay;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** When something was, as the clock on the wall of {@code zone} had it. JSON keeps UTC. */
record WallTime(ZoneId zone) {
  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm z", Locale.ENGLISH);

  /** As {@code 2026-11-25 08:13 CET}; a day that was written down without a time has none. */
  String words(Instant at) {
    return ShopDay.isAlone(at) ? ShopDay.of(at, zone).toString() : MINUTES.format(at.atZone(zone));
  }
}
