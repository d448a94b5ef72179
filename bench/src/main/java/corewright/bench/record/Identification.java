package corewright.bench.record;

import java.util.List;
import java.util.Map;

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
    String nextQuestion) {

  public Identification {
    posteriors = Map.copyOf(posteriors);
    conflicts = List.copyOf(conflicts);
  }

  /** How far the answer carries: opened and quoted, pre-tested only, or neither. */
  public enum Band {
    IDENTIFIED,
    PROBABLE,
    UNCERTAIN
  }
}
