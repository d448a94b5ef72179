package corewright.bench.judge;

import corewright.bench.record.Finding;
import corewright.bench.record.Finding.Outcome;
import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the verdict table looks at: one run with everything that was found in it. */
record Saw(
    RunEnd end,
    List<MeasuredHold> holds,
    Family family,
    Profile profile,
    Plan plan,
    InputCheck inputs,
    InputCheck.Seen input,
    Rule rule,
    List<Finding> findings,
    List<String> doubts) {

  /** A load draws nothing from less than this: whatever it draws comes from somewhere else. */
  private static final double NO_SOURCE_V = 1.0;

  boolean ended(RunEnd.Kind kind) {
    return end.kind() == kind;
  }

  boolean tripped(RunEnd.Trip trip) {
    return ended(RunEnd.Kind.TRIPPED) && end.trip() == trip;
  }

  boolean qualified(Qualifier qualifier) {
    return input.qualifier() == qualifier;
  }

  /** A hold whose output went over the family's abort limit. */
  Optional<String> over() {
    return holds.stream()
        .filter(h -> peak_V(h) > family.abort().outputOver_V())
        .findFirst()
        .map(h -> reading(h, "rose above ", family.abort().outputOver_V()));
  }

  /** A loaded hold whose output reads as nothing: the wire to it is off, not the unit dead. */
  Optional<String> contradiction() {
    return holds.stream()
        .filter(h -> load_A(h) >= profile.provingLoad_A())
        .filter(h -> output_V(h).filter(v -> v < NO_SOURCE_V).isPresent())
        .findFirst()
        .map(
            h ->
                "The load draws "
                    + Figures.number(load_A(h), 2)
                    + " A where the output reads "
                    + h.value(Quantity.OUTPUT).map(Figures::withU).orElse("nothing")
                    + ": no unit can do that, a measuring lead is off.");
  }

  /**
   * A hold with a valid input of its own whose output lies below the abort limit, or that could not
   * carry the load asked for. The output at rest is good evidence only against the unit: a dead one
   * draws no current and yet is no reading at rest.
   */
  Optional<String> collapse() {
    return holds.stream()
        .filter(h -> inputs.hold(h).qualifier() != Qualifier.VOID)
        .filter(h -> output_V(h).filter(v -> v < collapsed_V(h)).isPresent())
        .min(Comparator.comparingDouble(h -> output_V(h).orElse(0.0)))
        .map(h -> reading(h, "collapsed below ", collapsed_V(h)));
  }

  Stream<Finding> with(Outcome outcome) {
    return findings.stream()
        .filter(f -> f.outcome() == outcome)
        .sorted(
            Comparator.comparing((Finding f) -> !f.limit().headline()).thenComparing(Saw::badness));
  }

  /** For each limit that passed, the finding that came closest to it; the headline first. */
  Stream<Finding> closest() {
    Map<String, Finding> byLimit = new LinkedHashMap<>();
    with(Outcome.PASS).forEach(f -> byLimit.putIfAbsent(f.limit().id(), f));
    return byLimit.values().stream();
  }

  /** A judged hold with at least the proving load. */
  boolean loaded() {
    return holds.stream().filter(plan::judged).anyMatch(h -> load_A(h) >= profile.provingLoad_A());
  }

  double largestLoad_A() {
    return holds.stream().mapToDouble(Saw::load_A).max().orElse(0);
  }

  List<String> sentences(Stream<Finding> chosen) {
    return chosen.map(f -> Sentences.of(f, at(f), rule)).toList();
  }

  private String at(Finding finding) {
    return finding.hold() < 0 ? "" : Sentences.atLoad(holds.get(finding.hold()));
  }

  private double collapsed_V(MeasuredHold hold) {
    double abort = family.abort().outputUnder_V();
    return plan.fellShort(hold)
        ? profile.limits().stream()
            .filter(l -> l.quantity() == Quantity.OUTPUT && l.side() == Limit.Side.AT_LEAST)
            .mapToDouble(Limit::fail)
            .min()
            .orElse(abort)
        : abort;
  }

  private static String reading(MeasuredHold hold, String verb, double bound_V) {
    return hold.value(Quantity.OUTPUT)
        .map(
            m ->
                "Output was "
                    + Figures.withU(m)
                    + Sentences.atLoad(hold)
                    + "; it "
                    + verb
                    + Figures.like(bound_V, m)
                    + ".")
        .orElse("");
  }

  private static double peak_V(MeasuredHold hold) {
    return output_V(hold).orElse(0.0)
        + hold.value(Quantity.OVERSHOOT).map(Measurement::value).filter(v -> v > 0).orElse(0.0);
  }

  private static Optional<Double> output_V(MeasuredHold hold) {
    return hold.value(Quantity.OUTPUT).map(Measurement::value);
  }

  private static double load_A(MeasuredHold hold) {
    return hold.value(Quantity.LOAD).map(Measurement::value).orElse(0.0);
  }

  /** Margin in parts of the limit: what lies furthest beyond its own limit comes first. */
  private static double badness(Finding finding) {
    double scale = Math.max(Math.abs(finding.limit().pass()), 1e-9);
    return finding.margin().map(margin -> margin / scale).orElse(Double.NEGATIVE_INFINITY);
  }
}
