package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which build a unit is, how sure that is, what speaks against it, and what to look at next. */
public final class Identifier {
  /** The answer of a cue that was looked for and could not be seen: the same as none. */
  public static final String NOT_SEEN = "not seen";

  /** A variant less probable than this is no longer a candidate. */
  private static final double CANDIDATE = 0.05;

  private Identifier() {}

  /** As {@link #identify(Family, List, Map)}, with the family's own shares of each variant. */
  public static Identification identify(Family family, List<CueAnswer> answers) {
    return identify(family, answers, Map.of());
  }

  /**
   * Weighs what was seen.
   *
   * @param answers cues and checklist lines; of several to one cue the latest counts
   * @param priors the shop's own share of each variant, by id; may be empty
   * @throws IllegalArgumentException if an answer is none of its cue's, naming those that are
   */
  public static Identification identify(
      Family family, List<CueAnswer> answers, Map<String, Double> priors) {
    return new Standing(family, answers, priors).identification();
  }

  /** The cue to look at next; empty when no answer would change what is done with the unit. */
  public static Optional<Cue> next(
      Family family, List<CueAnswer> answers, Map<String, Double> priors) {
    return new Standing(family, answers, priors).next();
  }

  /** What each possible answer to a cue would make of the unit. */
  public static List<Consequence> consequences(
      Family family, List<CueAnswer> answers, Map<String, Double> priors, Cue cue) {
    return new Standing(family, answers, priors).consequences(cue);
  }

  /**
   * The answer that a number or date as it was read stands for, {@link #NOT_SEEN} where it is none
   * or more than one.
   */
  public static String answer(Cue cue, String read, Instant when) {
    return Understood.of(cue, new CueAnswer(cue.id(), NOT_SEEN, "", when, read, "")).answer();
  }

  /**
   * Why a number or date as it was read would count for nothing, a clause; empty where it counts.
   */
  public static String doubt(Cue cue, String read, Instant when) {
    return Understood.of(cue, new CueAnswer(cue.id(), NOT_SEEN, "", when, read, "")).doubt();
  }

  /**
   * Whether something else would be done with one of the remaining candidates, those of at least 5
   * %, than with the most probable.
   */
  public static boolean candidatesDiffer(Family family, Identification identification) {
    return identification.posteriors().entrySet().stream()
            .filter(e -> e.getValue() >= CANDIDATE || e.getKey().equals(identification.variant()))
            .flatMap(e -> family.variant(e.getKey()).stream())
            .map(Fate::of)
            .distinct()
            .count()
        > 1;
  }
}
