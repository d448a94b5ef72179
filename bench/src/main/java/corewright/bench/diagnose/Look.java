package corewright.bench.diagnose;

import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A run's holds, in the words that the signs are written in. */
final class Look {
  private static final double AT_REST = 0.02;
  private static final double LIGHT = 0.15;
  private static final double LOWERED_LINE = 0.9;
  private static final double REGULATED = 0.8;
  private static final double DIODE_V = 2.5;

  private final Family family;
  private final List<MeasuredHold> holds;
  private final double line_V;

  Look(MeasuredRun run, Family family) {
    this.family = family;
    holds = run.holds().stream().filter(h -> h.value(Quantity.OUTPUT).isPresent()).toList();
    line_V = holds.stream().mapToDouble(h -> value(h, Quantity.INPUT)).max().orElse(0);
  }

  Family family() {
    return family;
  }

  List<MeasuredHold> holds() {
    return holds;
  }

  /** The first hold at rest on the highest input; where the load is never off, its lowest. */
  Optional<MeasuredHold> rest() {
    return holds.stream()
        .filter(h -> atRest(h) && nominalLine(h))
        .findFirst()
        .or(
            () ->
                holds.stream()
                    .filter(h -> load_A(h) < LIGHT * family.ratedLoad_A() && nominalLine(h))
                    .min(Comparator.comparingDouble(Look::load_A)));
  }

  /** More than a trickle, below which a converter answers a step otherwise. */
  boolean carries(MeasuredHold h) {
    return load_A(h) > LIGHT * family.ratedLoad_A();
  }

  List<MeasuredHold> loaded() {
    return holds.stream().filter(h -> !atRest(h)).toList();
  }

  boolean atRest(MeasuredHold h) {
    return load_A(h) < AT_REST * family.ratedLoad_A();
  }

  /** On the highest input of the run, or near it. */
  boolean nominalLine(MeasuredHold h) {
    return value(h, Quantity.INPUT) > LOWERED_LINE * line_V;
  }

  /** The input was not lowered within the hold, as in a start: the output may follow that. */
  boolean inputStays(MeasuredHold h) {
    double mean_V = value(h, Quantity.INPUT);
    return h.feeds().stream()
        .flatMap(f -> f.lowestMedian().measurement().stream())
        .allMatch(lowest -> lowest.value() > LOWERED_LINE * mean_V);
  }

  boolean regulated(MeasuredHold h) {
    return value(h, Quantity.OUTPUT) > REGULATED * family.output_V();
  }

  /** The output is the input less a diode: the converter does not switch. */
  boolean passesThrough(MeasuredHold h) {
    double v = value(h, Quantity.OUTPUT);
    double in = value(h, Quantity.INPUT);
    return v < in + 0.5 && v > in - DIODE_V;
  }

  double rated_W() {
    return family.output_V() * family.ratedLoad_A();
  }

  static double in_W(MeasuredHold h) {
    return value(h, Quantity.INPUT) * value(h, Quantity.INPUT_CURRENT);
  }

  static double out_W(MeasuredHold h) {
    return value(h, Quantity.OUTPUT) * load_A(h);
  }

  static double load_A(MeasuredHold h) {
    return Math.max(0, value(h, Quantity.LOAD));
  }

  /** The number; 0 where it was not measured. */
  static double value(MeasuredHold h, Quantity quantity) {
    return h.value(quantity).map(Measurement::value).orElse(0.0);
  }

  static String reading(MeasuredHold h, Quantity quantity) {
    return h.value(quantity).map(Figures::withU).orElse("not read");
  }

  static String at(MeasuredHold h) {
    return " at " + Figures.number(load_A(h), 2) + " A";
  }
}
