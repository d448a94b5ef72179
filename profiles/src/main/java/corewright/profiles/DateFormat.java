package corewright.profiles;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * How a maker writes the date of making on a label. Weeks are those of ISO 8601; a code is read by
 * its digits, and what often parts them (blank, hyphen, slash, dot, w) is passed over.
 */
public enum DateFormat {
  /** Two digits of the year, two of the week. */
  YYWW("YYWW"),
  /** Two digits of the week, two of the year. */
  WWYY("WWYY"),
  /** The whole year, two digits of the week. */
  YYYYWW("YYYYWW"),
  /** Two digits of the year, three of the day in it. */
  YYDDD("YYDDD"),
  /** The last digit of the year, two of the week: the decade is left to the reader. */
  YWW("YWW");

  private static final int FIRST_YEAR = 2000;
  private static final int LAST_YEAR = 2099;

  private final String pattern;

  DateFormat(String pattern) {
    this.pattern = pattern;
  }

  /** As files write it. */
  public String pattern() {
    return pattern;
  }

  /** The digits of a code as it was read; empty where anything else stands between them. */
  public static String digits(String code) {
    String digits = code.strip().replaceAll("[ \\-/.wW]", "");
    return digits.chars().allMatch(c -> c >= '0' && c <= '9') ? digits : "";
  }

  /** Whether {@code digits} has the length of this format. */
  public boolean fits(String digits) {
    return digits.length() == pattern.length();
  }

  /**
   * The weeks that a code can mean, each as year · 100 + week; none where no such week or day
   * exists.
   */
  public Set<Integer> weeks(String digits) {
    Set<Integer> weeks = new TreeSet<>();
    if (!fits(digits) || !digits.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return weeks;
    }
    int year = part(digits, 'Y');
    for (int full : years(year)) {
      int week = pattern.contains("D") ? weekOfDay(full, part(digits, 'D')) : part(digits, 'W');
      if (week > 10000) {
        weeks.add(week);
      } else if (week >= 1 && week <= weeksIn(full)) {
        weeks.add(full * 100 + week);
      }
    }
    return weeks;
  }

  /** Weeks between two weeks as {@link #weeks} gives them; negative if {@code to} is earlier. */
  public static long between(int from, int to) {
    return Math.floorDiv(monday(to).toEpochDay() - monday(from).toEpochDay(), 7L);
  }

  /** The week of a day, as year · 100 + week. */
  public static int weekOf(LocalDate day) {
    return day.get(IsoFields.WEEK_BASED_YEAR) * 100 + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
  }

  /** A week as a person reads it, as {@code 2014w31}. */
  public static String words(int week) {
    int inYear = week % 100;
    return week / 100 + "w" + (inYear < 10 ? "0" : "") + inYear;
  }

  private List<Integer> years(int year) {
    return switch (this) {
      case YYYYWW -> year >= FIRST_YEAR && year <= LAST_YEAR ? List.of(year) : List.of();
      case YWW ->
          IntStream.rangeClosed(0, 9).mapToObj(tens -> FIRST_YEAR + 10 * tens + year).toList();
      case YYWW, WWYY, YYDDD -> List.of(FIRST_YEAR + year);
    };
  }

  private int part(String digits, char of) {
    return Integer.parseInt(digits.substring(pattern.indexOf(of), pattern.lastIndexOf(of) + 1));
  }

  private static int weekOfDay(int year, int day) {
    return day >= 1 && day <= LocalDate.of(year, 1, 1).lengthOfYear()
        ? weekOf(LocalDate.ofYearDay(year, day))
        : 0;
  }

  /** 28 December always lies in the last week of its year (ISO 8601). */
  private static int weeksIn(int year) {
    return LocalDate.of(year, 12, 28).get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
  }

  private static LocalDate monday(int week) {
    return LocalDate.of(week / 100, 1, 4)
        .with(java.time.DayOfWeek.MONDAY)
        .plusWeeks(week % 100 - 1L);
  }
}
