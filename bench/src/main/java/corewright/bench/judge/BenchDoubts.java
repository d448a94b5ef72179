package corewright.bench.judge;

import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What in a run no unit can do, so that the bench or its wiring did it. Each is one sentence. */
final class BenchDoubts {
  private static final double SWAPPED_V = -1;

  /** An input so far above what the source was told is not the input. */
  private static final double TOO_HIGH = 1.3;

  /** A load is off by more than this part of the rated load. */
  private static final double OFF_LOAD = 0.05;

  private final Family family;
  private final Plan plan;

  BenchDoubts(Family family, Plan plan) {
    this.family = family;
    this.plan = plan;
  }

  /** Of every hold, and those of a reference unit on the same bench. */
  List<String> of(List<MeasuredHold> holds, List<String> reference) {
    return Stream.concat(
            reference.stream(),
            holds.stream()
                .flatMap(h -> Stream.of(swapped(h), exchanged(h), load(h)))
                .flatMap(Optional::stream))
        .distinct()
        .toList();
  }

  private static Optional<String> swapped(MeasuredHold h) {
    return h.value(Quantity.OUTPUT)
        .filter(m -> m.value() < SWAPPED_V)
        .map(m -> "The output reads " + Figures.withU(m) + ": its measuring leads are swapped.");
  }

  private Optional<String> exchanged(MeasuredHold h) {
    double most_V = TOO_HIGH * family.inputCeiling_V();
    return h.value(Quantity.INPUT)
        .filter(m -> m.value() > most_V)
        .map(
            m ->
                "The input reads "
                    + Figures.withU(m)
                    + ", more than the unit may ever be given: the measuring leads are exchanged.");
  }

  /** More than was asked: the load, not the unit. Less than asked may be the unit's doing. */
  private Optional<String> load(MeasuredHold h) {
    List<Step> steps = plan.inOrder(h);
    Optional<Measurement> load = h.value(Quantity.LOAD);
    if (steps.isEmpty() || load.isEmpty()) {
      return Optional.empty();
    }
    double asked_A = steps.get(0).load_A();
    // A bank of resistors draws more from an output that is too high: then the unit is.
    double high = h.value(Quantity.OUTPUT).map(m -> m.value() / family.output_V()).orElse(1.0);
    double most_A = asked_A * Math.max(1, high) + OFF_LOAD * family.ratedLoad_A();
    return load.get().value() <= most_A
        ? Optional.empty()
        : Optional.of(
            "The load draws "
                + Figures.withU(load.get())
                + " where "
                + Figures.number(asked_A, 2)
                + " A was asked: the load or its channel is off.");
  }
}
