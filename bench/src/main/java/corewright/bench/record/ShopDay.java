package corewright.bench.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * Which day a moment of the record was where the shop stands. Old books know days and no times; the
 * record holds such a day as midnight UTC, and it stays that day everywhere.
 */
public final class ShopDay {
  private static final long DAY_S = 86_400;

  private ShopDay() {}

  public static LocalDate of(Instant moment, ZoneId zone) {
    return LocalDate.ofInstant(moment, isAlone(moment) ? ZoneOffset.UTC : zone);
  }

  /** Whether it is a day that was written down without a time. */
  public static boolean isAlone(Instant moment) {
    return moment.getNano() == 0 && Math.floorMod(moment.getEpochSecond(), DAY_S) == 0;
  }
}
