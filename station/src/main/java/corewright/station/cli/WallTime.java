package corewright.station.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** When something was, as the clock on the wall of {@code zone} had it. JSON keeps UTC. */
record WallTime(ZoneId zone) {
  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm z", Locale.ENGLISH);

  /** As {@code 2026-11-25 08:13 CET}. */
  String words(Instant at) {
    return MINUTES.format(at.atZone(zone));
  }
}
