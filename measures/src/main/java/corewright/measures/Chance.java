package corewright.measures;

/**
 * A probability as people read it: no cue and no reading makes anything certain, so it is never 0
 * or 1. JSON keeps the number.
 */
public final class Chance {
  private static final double LEAST = 0.01;

  private Chance() {}

  /** As {@code 0.83}, {@code over 0.99} or {@code under 0.01}. */
  public static String words(double probability) {
    if (probability > 1 - LEAST) {
      return "over " + Figures.number(1 - LEAST, 2);
    }
    return isWorthTelling(probability)
        ? Figures.number(probability, 2)
        : "under " + Figures.number(LEAST, 2);
  }

  /** Whether a list of several should name it at all. */
  public static boolean isWorthTelling(double probability) {
    return probability >= LEAST;
  }
}
