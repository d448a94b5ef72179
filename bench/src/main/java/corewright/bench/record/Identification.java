package corewright.bench.record;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Which build it is, and how sure.
 *
 * @param variant most probable variant id
 * @param posterior its probability, 0 to 1
 * @param runnerUp second most probable, empty if there is only one
 * @param posteriors every variant
 * @param conflicts observed cues that disagree with the winner, worst first, each a sentence
 * @param nextQuestion what to look at next, a question; empty when nothing would change the
 *     decision
 * @param history what may have happened to the unit, the most probable first; empty where nothing
 *     was looked at
 */
public record Identification(
    String family,
    int keyRevision,
    String variant,
    double posterior,
    Band band,
    String runnerUp,
    double runnerUpPosterior,
    Map<String, Double> posteriors,
    List<String> conflicts,
    String nextQuestion,
    List<Hypothesis> history) {

  public Identification {
    posteriors = Map.copyOf(posteriors);
    conflicts = List.copyOf(conflicts);
    history = List.copyOf(Objects.requireNonNullElse(history, List.of())); // older records: none
  }

  /** Without a word on its past. */
  public Identification(
      String family,
      int keyRevision,
      String variant,
      double posterior,
      Band band,
      String runnerUp,
      double runnerUpPosterior,
      Map<String, Double> posteriors,
      List<String> conflicts,
      String nextQuestion) {
    this(
        family,
        keyRevision,
        variant,
        posterior,
        band,
        runnerUp,
        runnerUpPosterior,
        posteriors,
        conflicts,
        nextQuestion,
        List.of());
  }

  /** Whether a hypothesis about its past is more likely than not. */
  public boolean probably(String hypothesis) {
    return history.stream().anyMatch(h -> h.id().equals(hypothesis) && h.probability() >= 0.5);
  }

  /** How far the answer carries: opened and quoted, pre-tested only, or neither. */
  public enum Band {
    IDENTIFIED,
    PROBABLE,
    UNCERTAIN
  }
}
