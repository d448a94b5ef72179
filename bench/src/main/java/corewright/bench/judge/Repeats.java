package corewright.bench.judge;

import corewright.bench.record.Finding;
import corewright.bench.record.Finding.Outcome;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether the crankings of a run speak against one another: they differ by more than one unit does,
 * the worst is bad and the best is good. A contact does that, in the unit or on the bench, and no
 * converter that is short of power; so it is neither a pass nor a fail. The trade asks for four of
 * five that agree (common practice, no source); with fewer told apart the doubt is kept, both ways.
 */
final class Repeats {
  static final String REMEDY =
      "Crank it again cold, hot and while it is tapped, in another fixture if there is one.";

  private static final Set<Quantity> OF_A_CRANKING =
      Set.of(
          Quantity.CRANK_OUTPUT,
          Quantity.CRANK_LOWEST,
          Quantity.CRANK_DRIFT,
          Quantity.CRANK_SPREAD);

  private Repeats() {}

  /** A sentence if they do, and nothing but a cranking failed. */
  static Optional<String> of(Saw s) {
    List<Finding> failed = s.with(Outcome.FAIL).toList();
    Optional<Finding> spread =
        failed.stream().filter(f -> f.quantity() == Quantity.CRANK_SPREAD).findFirst();
    boolean nothingElse = failed.stream().allMatch(f -> OF_A_CRANKING.contains(f.quantity()));
    if (spread.isEmpty() || !nothingElse) {
      return Optional.empty();
    }
    Measurement apart = spread.get().measurement().orElseThrow();
    return s.findings().stream()
        .filter(f -> f.quantity() == Quantity.CRANK_OUTPUT && f.measurement().isPresent())
        .filter(f -> s.rule().outcome(f.limit(), best(f, apart)) == Outcome.PASS)
        .findFirst()
        .map(
            f ->
                "The crankings speak against one another: the output held "
                    + Figures.withU(best(f, apart))
                    + " in the best of them, and "
                    + Figures.withU(f.measurement().orElseThrow())
                    + " in the worst. That is intermittent.");
  }

  private static Measurement best(Finding worst, Measurement apart) {
    Measurement m = worst.measurement().orElseThrow();
    return new Measurement(m.value() + apart.value(), m.u(), m.unit());
  }
}
