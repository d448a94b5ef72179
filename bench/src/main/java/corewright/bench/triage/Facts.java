package corewright.bench.triage;

import java.util.List;

/**
 * What the decision quotes: words that others found, never looked into.
 *
 * @param obstacle answers of the checklist that forbid power, as {@code pins: bent}; may be empty
 * @param evidence the judgement's reasons, most important first
 * @param identity which build, how sure, what speaks against it; sentences
 * @param identityQuestion what to look at next to know the build; may be empty
 * @param build why this build can or cannot be rebuilt, a plain clause; may be empty
 * @param measurement the next measurement that would tell the fault groups apart; may be empty
 * @param sums the economics, each a sentence
 */
public record Facts(
    String obstacle,
    List<String> evidence,
    List<String> identity,
    String identityQuestion,
    String build,
    String measurement,
    List<String> sums) {

  public static final Facts NONE = new Facts("", List.of(), List.of(), "", "", "", List.of());

  public Facts {
    evidence = List.copyOf(evidence);
    identity = List.copyOf(identity);
    sums = List.copyOf(sums);
  }

  /** The same, with the answers of the checklist that forbid power. */
  public Facts forbidding(List<String> answers) {
    return new Facts(
        String.join(", ", answers), evidence, identity, identityQuestion, build, measurement, sums);
  }

  /** The reading that decided, or nothing. */
  String headline() {
    return evidence.isEmpty() ? "" : evidence.get(0) + " ";
  }
}
