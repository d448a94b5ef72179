package corewright.measures.control;

/**
 * What a run of points says that a single one does not: the four of the Western Electric handbook.
 * Together they give a false alarm every 92 points, the first alone every 370.
 *
 * @see "Western Electric, Statistical Quality Control Handbook (1956), 25; false alarms: Champ and
 *     Woodall, Technometrics 29 (1987) 393 (both from memory)"
 */
public enum RunRule {
  BEYOND_THREE("one point beyond 3 standard deviations", 1, 1, 3),
  TWO_BEYOND_TWO("two of three beyond 2 standard deviations, on one side", 2, 3, 2),
  FOUR_BEYOND_ONE("four of five beyond 1 standard deviation, on one side", 4, 5, 1),
  EIGHT_ON_ONE_SIDE("eight in a row on one side of the centre", 8, 8, 0);

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
