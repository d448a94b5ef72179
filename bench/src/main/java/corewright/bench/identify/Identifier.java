package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which build a unit is, how sure that is, what speaks against it, and what to look at next. */
public final class Identifier {
  /** The answer of a cue that was looked for and could not be seen: the same as none. */
  public static final String NOT_SEEN = "not seen";

  private static final double IDENTIFIED = 0.95;
  private static final double PROBABLE = 0.80;

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
    Key key = new Key(family, priors);
    Map<Cue, String> seen = key.seen(answers);
    Map<Variant, Double> posterior = key.posterior(seen);
    List<Variant> ranked = List.copyOf(posterior.keySet());
    Variant winner = ranked.get(0);
    Conflicts conflicts = new Conflicts(key, seen, winner);
    Band band = band(probability(posterior, winner), conflicts);
    Optional<Variant> second = ranked.stream().skip(1).findFirst();
    Map<String, Double> byId = new LinkedHashMap<>();
    posterior.forEach((v, p) -> byId.put(v.id(), p));
    return new Identification(
        family.id(),
        family.revision(),
        winner.id(),
        probability(posterior, winner),
        band,
        second.map(Variant::id).orElse(""),
        second.map(v -> probability(posterior, v)).orElse(0.0),
        byId,
        conflicts.sentences(),
        next(family, answers, priors).map(Cue::question).orElse(""));
  }

  /** The cue to look at next; empty when no answer would change what is done with the unit. */
  public static Optional<Cue> next(
      Family family, List<CueAnswer> answers, Map<String, Double> priors) {
    Key key = new Key(family, priors);
    Map<Cue, String> seen = key.seen(answers);
    Map<Variant, Double> posterior = key.posterior(seen);
    Variant winner = posterior.keySet().iterator().next();
    Conflicts conflicts = new Conflicts(key, seen, winner);
    Band band = band(probability(posterior, winner), conflicts);
    boolean settled =
        band == Band.IDENTIFIED || (band == Band.PROBABLE && !differ(posterior, conflicts));
    List<String> asked = answers.stream().map(CueAnswer::cue).toList();
    return settled || conflicts.veto().isPresent()
        ? Optional.empty()
        : new Questions(key, seen)
            .ranked().stream()
                .map(Questions.Worth::cue)
                .filter(c -> !asked.contains(c.id()))
                .findFirst();
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

  private static boolean differ(Map<Variant, Double> posterior, Conflicts conflicts) {
    return conflicts.swappedLabel().isPresent()
        || posterior.entrySet().stream()
                .filter(e -> e.getValue() >= CANDIDATE)
                .map(e -> Fate.of(e.getKey()))
                .distinct()
                .count()
            > 1;
  }

  private static Band band(double posterior, Conflicts conflicts) {
    if (posterior < PROBABLE || conflicts.veto().isPresent()) {
      return Band.UNCERTAIN;
    }
    boolean doubt = conflicts.amongReliable() || conflicts.swappedLabel().isPresent();
    return posterior < IDENTIFIED || doubt ? Band.PROBABLE : Band.IDENTIFIED;
  }

  private static double probability(Map<Variant, Double> posterior, Variant variant) {
    return posterior.getOrDefault(variant, 0.0);
  }
}
