package corewright.bench.record;

import corewright.measures.Chance;
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

  /** Below it nobody would handle the unit otherwise; a judgement. */
  private static final double WORTH_SAYING = 0.2;

  public Hypothesis {
    because = List.copyOf(because);
  }

  /** Whether people are told of it: it would change what they do, and may well be so. */
  public boolean worthSaying() {
    return !handling.isEmpty() && probability >= WORTH_SAYING;
  }

  /** What may have happened, how probable that is, and what speaks for it. */
  public String sentence() {
    return (probability >= 0.5 ? "Probably " : "Perhaps ")
        + id
        + ", "
        + Chance.words(probability)
        + (because.isEmpty() ? "" : ": " + String.join("; ", because))
        + ".";
  }
}
