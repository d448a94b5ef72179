package corewright.bench.record;

import java.util.List;
import java.util.Optional;

/**
 * What the readings of a run are consistent with; never more.
 *
 * @param candidates up to three groups of components, most probable first; empty where nothing may
 *     be said of the unit
 * @param determined whether the first is at least as probable as not
 * @param excluded what was looked at before the unit was suspected, each a sentence
 */
public record Diagnosis(List<Candidate> candidates, boolean determined, List<String> excluded) {

  public Diagnosis {
    candidates = List.copyOf(candidates);
    excluded = List.copyOf(excluded);
  }

  /** No group is suspected, for this reason. */
  public static Diagnosis ofNothing(String why) {
    return new Diagnosis(List.of(), false, List.of(why));
  }

  /** The group, where it may be named. */
  public Optional<Candidate> named() {
    return determined ? Optional.of(candidates.get(0)) : Optional.empty();
  }

  /** The measurement that would tell the most; empty where no group is suspected. */
  public Optional<String> next() {
    return candidates.stream().findFirst().map(Candidate::next);
  }

  /**
   * One group.
   *
   * @param group stable id, as {@code OUTPUT_ESR}
   * @param words as in "consistent with …"
   * @param probability that it is the group at fault, 0 to 1, given that one of them is
   * @param evidenceFor readings that speak for it, the strongest first, each a clause
   * @param evidenceAgainst readings that speak against it, the strongest first, each a clause
   * @param next the measurement that would separate it from its strongest rival, a sentence
   */
  public record Candidate(
      String group,
      String words,
      double probability,
      List<String> evidenceFor,
      List<String> evidenceAgainst,
      String next) {
    public Candidate {
      evidenceFor = List.copyOf(evidenceFor);
      evidenceAgainst = List.copyOf(evidenceAgainst);
    }
  }
}
