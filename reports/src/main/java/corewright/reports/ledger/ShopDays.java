package corewright.reports.ledger;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;

/**
 * Which day it was where the shop stands, of a time in UTC. A million of them are asked for, so the
 * minute at which the shop's day turned is looked up once a day. It says what {@link
 * corewright.bench.record.ShopDay} says of a moment.
 */
final class ShopDays {
  private static final int DAY = 10;
  private static final int HOUR = 11;
  private static final int MINUTE_END = 16;
  private static final String A_DAY_ALONE = "T00:00:00";

  private final ZoneId zone;
  private final Map<String, Turn> turns = new HashMap<>();
  private String last = "none yet";
  private Turn turn = new Turn(LocalDate.EPOCH, LocalDate.EPOCH, "", LocalDate.EPOCH);

  ShopDays(ZoneId zone) {
    this.zone = zone;
  }

  /**
   * One day of UTC.
   *
   * @param before the shop's day at its beginning
   * @param at hour and minute of UTC from which on it is {@code after}
   */
  private record Turn(LocalDate utc, LocalDate before, String at, LocalDate after) {}

  /**
   * The shop's day.
   *
   * @param time ISO 8601 in UTC, or a day alone
   */
  LocalDate of(String time) {
    if (!time.startsWith(last)) { // many in a row came on one day
      last = time.substring(0, DAY);
      turn = turns.computeIfAbsent(last, this::turn);
    }
    if (time.length() < MINUTE_END || isADayAlone(time)) {
      return turn.utc();
    }
    return time.substring(HOUR, MINUTE_END).compareTo(turn.at()) < 0 ? turn.before() : turn.after();
  }

  private static boolean isADayAlone(String time) {
    if (!time.startsWith(A_DAY_ALONE, DAY)) {
      return false;
    }
    for (int i = DAY + A_DAY_ALONE.length(); i < time.length(); i++) {
      if (time.charAt(i) >= '1' && time.charAt(i) <= '9') {
        return false;
      }
    }
    return true;
  }

  private Turn turn(String day) {
    LocalDate utc = LocalDate.parse(day);
    LocalDate before = LocalDate.ofInstant(utc.atStartOfDay().toInstant(ZoneOffset.UTC), zone);
    LocalDate after =
        LocalDate.ofInstant(utc.atTime(LocalTime.MAX).toInstant(ZoneOffset.UTC), zone);
    String at =
        after.equals(before)
            ? ""
            : after.atStartOfDay(zone).toInstant().toString().substring(HOUR, MINUTE_END);
    return new Turn(utc, before, at, after);
  }
}
