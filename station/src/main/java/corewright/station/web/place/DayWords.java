package corewright.station.web.place;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A day as people say it: {@code Tuesday 24 November}. */
final class DayWords {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

  private DayWords() {}

  static String of(LocalDate day) {
    return DAY.format(day);
  }
}
