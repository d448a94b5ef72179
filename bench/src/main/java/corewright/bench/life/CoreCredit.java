package corewright.bench.life;

import corewright.profiles.Grade;

/**
 * What share of a deposit a core brings back. The grade says what is usual; after its window the
 * credit falls by ten points for each week that has begun, but never silently to nothing. Common
 * practice, no source.
 *
 * @param least_percent the least that is usual
 * @param most_percent the most that is usual
 */
public record CoreCredit(int least_percent, int most_percent) {
  private static final int WEEKLY_FALL_PERCENT = 10;
  private static final int FLOOR_PERCENT = 10;

  /**
   * The usual credit.
   *
   * @param late_days days after the end of the window; 0 or less is in time
   */
  public static CoreCredit usual(Grade grade, long late_days) {
    long weeks = Math.max(0, (late_days + 6) / 7);
    return new CoreCredit(
        fallen(grade.least_percent(), weeks), fallen(grade.most_percent(), weeks));
  }

  public boolean holds(int credit_percent) {
    return least_percent <= credit_percent && credit_percent <= most_percent;
  }

  private static int fallen(int percent, long weeks) {
    int floor = Math.min(percent, FLOOR_PERCENT);
    return (int) Math.max(floor, percent - WEEKLY_FALL_PERCENT * weeks);
  }
}
