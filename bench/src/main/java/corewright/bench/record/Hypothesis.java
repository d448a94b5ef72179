package corewright.bench.record;

import java.util.List;

/**
 * What may have happened to a unit before it came.
 *
 * @param id {@code as made}, {@code relabelled}, {@code rebuilt before} or {@code mixed}
 * @param probability 0 to 1; those of all four sum to 1
 * @param because what was seen that speaks for it, each a clause
 * @param handling what to do because of it, a sentence; empty for a unit that is as it was made
 */
public record Hypothesis(String id, double probability, List<String> because, String handling) {
  /** Somebody has rebuilt or repaired it before. */
  public static final String REBUILT_BEFORE = "rebuilt before";

  public Hypothesis {
    because = List.copyOf(because);
  }
}
