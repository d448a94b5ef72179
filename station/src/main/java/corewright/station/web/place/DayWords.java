package corewright.station.web.place;

import corewright.station.web.HouseClock;
import corewright.station.web.When;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Days as people say them: {@code Tuesday 24 November}, {@code due tomorrow}. */
final class DayWords {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter HOUR =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
  private static final List<String> NUMBERS =
      List.of(
          "Nothing", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten",
          "Eleven", "Twelve");

  private DayWords() {}

  static String of(LocalDate day) {
    return DAY.format(day);
  }

  /**
   * Until when something is due.
   *
   * @param due ISO 8601; empty where no day was given
   */
  static String due(String due, LocalDate today) {
    if (due.isEmpty()) {
      return "no day given";
    }
    LocalDate day = LocalDate.parse(due);
    if (day.isBefore(today)) {
      return "overdue, " + SHORT.format(day);
    }
    return day.equals(today)
        ? "due today"
        : day.equals(today.plusDays(1)) ? "due tomorrow" : "due " + SHORT.format(day);
  }

  /**
   * Since when something waits.
   *
   * @param at UTC, ISO 8601
   */
  static String since(String at, LocalDate today) {
    Instant since = Instant.parse(at);
    LocalDate day = When.local(since);
    return day.equals(today) ? "since " + hour(since) : "since " + SHORT.format(day);
  }

  static String hour(Instant at) {
    return HOUR.format(at.atZone(HouseClock.zone()));
  }

  /** How many things need someone, as a sentence begins. */
  static String need(int count) {
    String number = count < NUMBERS.size() ? NUMBERS.get(count) : String.valueOf(count);
    return count == 0
        ? "Nothing needs anyone"
        : number + (count == 1 ? " thing needs someone" : " things need someone");
  }
}
