package corewright.station.web;

import corewright.bench.record.ShopDay;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments as people read them: local, and never a bare UTC text. */
public final class When {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private When() {}

  /** As {@code 24 Nov 2026, 11:02}. */
  public static String moment(Instant at) {
    return moment(at, HouseClock.zone());
  }

  /** A day that was written down without a time has none here either. */
  static String moment(Instant at, ZoneId zone) {
    return ShopDay.isAlone(at) ? day(ShopDay.of(at, zone)) : MOMENT.format(at.atZone(zone));
  }

  /** The same from a text of the record, ISO 8601 in UTC. */
  public static String moment(String at) {
    return moment(Instant.parse(at));
  }

  /** As {@code 11:02}. */
  public static String time(Instant at) {
    return TIME.format(at.atZone(HouseClock.zone()));
  }

  /** As {@code 24 Nov 2026}. */
  public static String day(Instant at) {
    return day(local(at));
  }

  public static String day(LocalDate day) {
    return DAY.format(day);
  }

  /** The same from a text of the record, as {@code 2026-11-24}; empty stays empty. */
  public static String day(String day) {
    return day.isEmpty() ? "" : day(LocalDate.parse(day));
  }

  /** The day that it was here. */
  public static LocalDate local(Instant at) {
    return ShopDay.of(at, HouseClock.zone());
  }
}
