package corewright.bench.judge;

import corewright.bench.record.RunRecord;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.control.IndividualsChart;
import corewright.measures.control.IndividualsChart.Signal;
import corewright.measures.control.RunRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One headline reading of a reference unit on one bench, run after run: chart of individuals and
 * moving ranges. The first readings, {@value #BASELINE} at most, are the time when all was well.
 *
 * @param id of the {@link Headline}
 * @param points in the order of the runs
 * @param limits empty before there are enough readings, or where they never differ
 * @see "ISO 7870-2:2013, chart of individuals with limits from the moving range (from memory)"
 */
public record BenchChart(
    String id, String title, List<Point> points, Optional<IndividualsChart> limits) {
  /**
   * Limits from that many readings are not moved any more: a slow drift must not carry them along.
   *
   * @see "common practice, no source: 20 to 25"
   */
  public static final int BASELINE = 25;

  public BenchChart {
    points = List.copyOf(points);
  }

  /** One reading, of which run. */
  public record Point(RunRecord run, Measurement reading) {}

  /** The charts of some runs of one unit, profile and bench, the oldest run first. */
  public static List<BenchChart> of(List<RunRecord> runs) {
    Map<String, String> titles = new LinkedHashMap<>();
    Map<String, List<Point>> points = new LinkedHashMap<>();
    for (RunRecord run : runs) {
      run.measured().map(Headline::of).orElse(List.of()).stream()
          .peek(h -> titles.putIfAbsent(h.id(), h.title()))
          .forEach(
              h ->
                  points
                      .computeIfAbsent(h.id(), id -> new ArrayList<>())
                      .add(new Point(run, h.reading())));
    }
    return titles.entrySet().stream()
        .map(e -> chart(e.getKey(), e.getValue(), points.getOrDefault(e.getKey(), List.of())))
        .toList();
  }

  /** The last point is what is asked about; it never takes part in its own limits. */
  private static BenchChart chart(String id, String title, List<Point> points) {
    double[] before =
        points.subList(0, points.size() - 1).stream()
            .mapToDouble(p -> p.reading().value())
            .limit(BASELINE)
            .toArray();
    boolean moves = Arrays.stream(before).distinct().count() > 1;
    return new BenchChart(
        id,
        title,
        points,
        before.length < IndividualsChart.LEAST_BASELINE || !moves
            ? Optional.empty()
            : Optional.of(IndividualsChart.of(before)));
  }

  /** Rules that points break, whether or not it matters; none before there are limits. */
  public List<Signal> signals() {
    double[] values = points.stream().mapToDouble(p -> p.reading().value()).toArray();
    return limits.map(l -> l.signals(RunRule.BENCH, values)).orElse(List.of());
  }

  /**
   * What the last point says against the bench, each a sentence. Within the standard uncertainty
   * that every reading of this bench states anyway, a rule that is broken changes nothing that was
   * ever said of a unit: it is seen on the chart and stops nobody.
   */
  public List<String> against() {
    int last = points.size() - 1;
    return limits.stream()
        .flatMap(
            l ->
                signals().stream()
                    .filter(s -> s.index() == last)
                    .filter(
                        s -> {
                          Measurement now = points.get(last).reading();
                          return Math.abs(now.value() - l.centre()) > now.u();
                        })
                    .map(s -> sentence(l, s)))
        .toList();
  }

  private String sentence(IndividualsChart limits, Signal signal) {
    Measurement now = points.get(signal.index()).reading();
    return title
        + " is "
        + Figures.withU(now)
        + ", its centre is "
        + Figures.like(limits.centre(), now)
        + ": "
        + signal.rule().words()
        + ".";
  }
}
