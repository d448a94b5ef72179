package corewright.bench.triage;

import corewright.bench.record.Diagnosis;
import java.util.List;
import java.util.Optional;

/**
 * What the decision quotes: words that others found, never looked into.
 *
 * @param obstacle answers of the checklist that forbid power, as {@code pins: bent}; may be empty
 * @param evidence the judgement's reasons, most important first
 * @param identity which build, how sure, what speaks against it; sentences
 * @param identityQuestion what to look at next to know the build; may be empty
 * @param build why this build can or cannot be rebuilt, a plain clause; may be empty
 * @param finding what the customer can be told of the test, sentences; may be empty
 * @param diagnosis which groups the readings point at; empty without a test
 * @param sums the economics, each a sentence
 */
public record Facts(
    String obstacle,
    List<String> evidence,
    List<String> identity,
    String identityQuestion,
    String build,
    String finding,
    Optional<Diagnosis> diagnosis,
    List<String> sums) {

  public static final Facts NONE =
      new Facts("", List.of(), List.of(), "", "", "", Optional.empty(), List.of());

  public Facts {
    evidence = List.copyOf(evidence);
    identity = List.copyOf(identity);
    sums = List.copyOf(sums);
  }

  /** The same, with the answers of the checklist that forbid power. */
  public Facts forbidding(List<String> answers) {
    return new Facts(
        String.join(", ", answers),
        evidence,
        identity,
        identityQuestion,
        build,
        finding,
        diagnosis,
        sums);
  }

  /** The next measurement that would tell the fault groups apart, or nothing. */
  String measurement() {
    return diagnosis.flatMap(Diagnosis::next).orElse("");
  }

  /** The reading that decided, or nothing. */
  String headline() {
    return evidence.isEmpty() ? "" : evidence.get(0) + " ";
  }

  /** What in the checklist forbids power, a sentence. */
  String whyNoPower() {
    return obstacle.isEmpty()
        ? "The checklist has an answer that forbids power. "
        : "The checklist says " + obstacle + ". ";
  }

  /** Why the build cannot be rebuilt, a sentence. */
  String whyNoRebuild() {
    return build.isEmpty()
        ? "This build cannot be rebuilt. "
        : "This build cannot be rebuilt: " + build + ". ";
  }
}
