package corewright.measures.control;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a run of points says that a single one does not. The four of the Western Electric handbook
 * together give a false alarm every 92 points, the first alone every 370.
 *
 * @see "Western Electric, Statistical Quality Control Handbook (1956), 25; false alarms: Champ and
 *     Woodall, Technometrics 29 (1987) 393; six in a trend: Nelson, Journal of Quality Technology
 *     16 (1984) 237 (all from memory)"
 */
public enum RunRule {
  BEYOND_THREE("one point beyond 3 standard deviations", 1, 1, 3),
  TWO_BEYOND_TWO("two of three beyond 2 standard deviations, on one side", 2, 3, 2),
  FOUR_BEYOND_ONE("four of five beyond 1 standard deviation, on one side", 4, 5, 1),
  EIGHT_ON_ONE_SIDE("eight in a row on one side of the centre", 8, 8, 0),
  SIX_TRENDING("six in a row, each higher, or each lower, than the one before", 6, 6, 0) {
    @Override
    boolean brokenAt(double[] z, int at) {
      return trends(z, at, 1) || trends(z, at, -1);
    }
  };

  /** Those of the Western Electric handbook. */
  public static final Set<RunRule> HANDBOOK =
      Collections.unmodifiableSet(
          EnumSet.of(BEYOND_THREE, TWO_BEYOND_TWO, FOUR_BEYOND_ONE, EIGHT_ON_ONE_SIDE));

  /**
   * Those that a bench is held to.
   *
   * @see "common practice, no source"
   */
  public static final Set<RunRule> BENCH =
      Collections.unmodifiableSet(
          EnumSet.of(BEYOND_THREE, TWO_BEYOND_TWO, EIGHT_ON_ONE_SIDE, SIX_TRENDING));

  private final String words;
  private final int needed;
  private final int among;
  private final double beyond;

  RunRule(String words, int needed, int among, double beyond) {
    this.words = words;
    this.needed = needed;
    this.among = among;
    this.beyond = beyond;
  }

  public String words() {
    return words;
  }

  /**
   * Whether the run that ends with point {@code at} breaks the rule. The point itself must lie
   * beyond: a run does not signal again while it is coming back.
   *
   * @param z points as multiples of the standard deviation about the centre
   */
  boolean brokenAt(double[] z, int at) {
    return broken(z, at, 1) || broken(z, at, -1);
  }

  private static boolean trends(double[] z, int at, int way) {
    for (int i = at - 4; i <= at; i++) {
      if (i < 1 || !(way * z[i] > way * z[i - 1])) {
        return false;
      }
    }
    return true;
  }

  private boolean broken(double[] z, int at, int side) {
    if (!(side * z[at] > beyond)) {
      return false;
    }
    int count = 0;
    for (int i = Math.max(0, at - among + 1); i <= at; i++) {
      count += side * z[i] > beyond ? 1 : 0;
    }
    return count >= needed;
  }
}
