package corewright.reports.chart;

import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Limit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the one sentence and the jaws are about: the headline limit where it was met worst. */
public final class Headlines {
  private static final Set<Quantity> IN_THE_LANE = Set.of(Quantity.OUTPUT, Quantity.OUTPUT_MINIMUM);

  /** What was held against a limit and not measured comes first: it is the worst there is. */
  private static final Comparator<Finding> LEAST_MARGIN =
      Comparator.comparingDouble(f -> f.margin().orElse(Double.NEGATIVE_INFINITY));

  private Headlines() {}

  /** Windows of every hold in which something was held against a limit. */
  static List<Span> judged(RunRecord run) {
    return holds(run).stream()
        .filter(hold -> run.judgement().findings().stream().anyMatch(f -> f.hold() == hold.index()))
        .map(Headlines::window)
        .toList();
  }

  /** The hold of which the picture speaks. */
  static Optional<MeasuredHold> hold(RunRecord run) {
    return drawable(run)
        .flatMap(
            finding ->
                holds(run).stream().filter(hold -> hold.index() == finding.hold()).findFirst());
  }

  static Optional<Scene.Headline> of(RunRecord run, Words words) {
    return drawable(run)
        .flatMap(
            finding ->
                holds(run).stream()
                    .filter(hold -> hold.index() == finding.hold())
                    .findFirst()
                    .map(hold -> headline(run, finding, hold, words)));
  }

  /** The finding of the headline limit with the least margin; empty where none was made. */
  public static Optional<Finding> worst(RunRecord run) {
    return run.judgement().findings().stream()
        .filter(f -> f.limit().headline() && f.hold() >= 0)
        .min(LEAST_MARGIN);
  }

  /**
   * What can be drawn in the output lane: the headline, or else the worst finding on the output.
   */
  private static Optional<Finding> drawable(RunRecord run) {
    return run.judgement().findings().stream()
        .filter(f -> f.hold() >= 0 && IN_THE_LANE.contains(f.quantity()))
        .min(
            Comparator.<Finding>comparingInt(f -> f.limit().headline() ? 0 : 1)
                .thenComparing(LEAST_MARGIN));
  }

  private static Scene.Headline headline(
      RunRecord run, Finding finding, MeasuredHold hold, Words words) {
    Limit limit = finding.limit();
    Optional<Measurement> mean = finding.measurement();
    List<Span> floors =
        holds(run).stream()
            .filter(
                h ->
                    run.judgement().findings().stream()
                        .anyMatch(f -> f.hold() == h.index() && f.limit().id().equals(limit.id())))
            .map(Headlines::window)
            .toList();
    double margin = finding.margin().orElse(0.0);
    Digits digits = Digits.of(limit, words.numerals());
    return new Scene.Headline(
        window(hold),
        floors,
        limit.side(),
        limit.pass(),
        Words.tied(words.get("limit", digits.limit(limit, mean))),
        mean.map(Measurement::value),
        mean.map(m -> Words.tied(words.numerals().withU(m))).orElse(""),
        mean.map(
                m ->
                    Words.tied(
                        words.get(
                            above(limit, margin) ? "margin.above" : "margin.below",
                            digits.marginWithUnit(Math.abs(margin), m))))
            .orElse(""));
  }

  private static boolean above(Limit limit, double margin) {
    return (limit.side() == Limit.Side.AT_LEAST) == (margin >= 0);
  }

  private static Span window(MeasuredHold hold) {
    return new Span(hold.windowStart_s(), hold.windowEnd_s());
  }

  private static List<MeasuredHold> holds(RunRecord run) {
    return run.measured().map(MeasuredRun::holds).orElse(List.of());
  }
}
