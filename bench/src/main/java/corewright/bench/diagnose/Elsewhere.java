package corewright.bench.diagnose;

import corewright.bench.record.Judgement;
import corewright.bench.record.Qualifier;
import java.util.List;
import java.util.Optional;

/** Supply, fixture, digitizer: what must be out of the question before a unit is suspected. */
final class Elsewhere {
  private Elsewhere() {}

  /** Why nothing is said of the unit; empty where it may be suspected. */
  static Optional<String> of(Judgement judgement) {
    if (judgement.verdict().isEmpty()) {
      return Optional.of("The test does not go far enough to say what is wrong.");
    }
    return switch (judgement.verdict().get()) {
      case INCOMPLETE -> Optional.of("The test does not go far enough to say what is wrong.");
      case VOID ->
          Optional.of("The supply or the bench is in question, so the unit is not suspected.");
      case PASS -> Optional.of("Every limit was met, so nothing is suspected.");
      case MARGINAL, FAIL, UNSAFE ->
          judgement.qualifier().filter(q -> q != Qualifier.VALID).isPresent()
              ? Optional.of("The supply did not hold, so the unit is not suspected.")
              : Optional.empty();
    };
  }

  /** What was found to be in order, and what was not looked at. */
  static List<String> excluded(Judgement judgement) {
    return judgement.qualifier().isPresent()
        ? List.of("The input held in every judged hold: the supply is not what failed.")
        : List.of(
            "The unit did not come to a hold: the supply was not tried.",
            "The fixture is not excluded: a short in its leads or its discharge looks the same,"
                + " until it has been powered empty behind the same limit.");
  }
}
