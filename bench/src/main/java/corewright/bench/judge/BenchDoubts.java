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

  /** An output above this part of nominal is there. */
  private static final double THERE = 0.05;

  /** Loads that are so far apart, in parts of the rated one, no output meets with one level. */
  private static final double APART = 0.2;

  private final Family family;
  private final Plan plan;

  BenchDoubts(Family family, Plan plan) {
    this.family = family;
    this.plan = plan;
  }

  /** Of every hold, and those of a reference unit on the same bench. */
  List<String> of(List<MeasuredHold> holds, List<String> reference) {
    return Stream.concat(
            Stream.concat(reference.stream(), stuck(holds).stream()),
            holds.stream()
                .flatMap(h -> Stream.of(swapped(h), exchanged(h), load(h)))
                .flatMap(Optional::stream))
        .distinct()
        .toList();
  }

  /** The same to the last step at loads far apart, where something is there: an end of a range. */
  private Optional<String> stuck(List<MeasuredHold> holds) {
    List<MeasuredHold> still =
        holds.stream()
            .filter(h -> value(h, Quantity.OUTPUT) > THERE * family.output_V())
            .filter(h -> h.value(Quantity.RIPPLE_PEAK_TO_PEAK).isPresent())
            .filter(h -> value(h, Quantity.RIPPLE_PEAK_TO_PEAK) == 0)
            .toList();
    return still.stream()
        .filter(
            h ->
                still.stream()
                    .anyMatch(
                        other ->
                            value(other, Quantity.OUTPUT) == value(h, Quantity.OUTPUT)
                                && value(other, Quantity.LOAD) - value(h, Quantity.LOAD)
                                    > APART * family.ratedLoad_A()))
        .findFirst()
        .flatMap(h -> h.value(Quantity.OUTPUT))
        .map(
            m ->
                "The output reads "
                    + Figures.withU(m)
                    + " to the last step whatever the load: its channel is at an end of its range,"
                    + " or stands still.");
  }

  private static double value(MeasuredHold h, Quantity quantity) {
    return h.value(quantity).map(Measurement::value).orElse(0.0);
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
