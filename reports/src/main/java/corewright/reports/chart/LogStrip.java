package corewright.reports.chart;

import corewright.bench.log.Conclusion;
import corewright.bench.log.Crank;
import corewright.bench.log.Dot;
import corewright.bench.log.LogReading;
import corewright.bench.log.Supply;
import corewright.bench.log.Trace;
import corewright.bench.log.table.Role;
import corewright.measures.Measurement;
import corewright.profiles.InputZones;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is drawn of one crank of a log, or of a whole log without cranks.
 *
 * @param title which crank, and what it comes to; two lines
 * @param said under which it was judged or why not
 * @param time_s the strip's own axis, on the log's clock
 * @param judged empty where nothing was
 * @param quarter the lowest quarter of the output that decides
 * @param zones of the supply; empty without one
 * @param low the supply where it voids the crank
 */
record LogStrip(
    String title,
    String said,
    Span time_s,
    Optional<Span> judged,
    Optional<Measurement> quarter,
    Optional<InputZones> zones,
    Optional<Scene.Point> low,
    List<Trace> traces) {
  private static final double BEFORE_S = 2;
  private static final double AFTER_S = 2;

  LogStrip {
    traces = List.copyOf(traces);
  }

  /** One for each crank that was traced; one of all where there is none. */
  static List<LogStrip> of(LogReading log, Words words) {
    List<LogStrip> strips = new ArrayList<>();
    for (int i = 0; i < log.cranks().size(); i++) {
      if (!log.cranks().get(i).traces().isEmpty()) {
        strips.add(of(log.cranks().get(i), i + 1, words));
      }
    }
    return strips.isEmpty() ? List.of(whole(log, words)) : strips;
  }

  private static LogStrip of(Crank crank, int number, Words words) {
    Span span = new Span(crank.start_s() - BEFORE_S, crank.end_s() + AFTER_S);
    boolean silent = crank.conclusion() == Conclusion.VOID;
    String said =
        silent
            ? words.get("log.void")
            : crank
                .window()
                .map(
                    w ->
                        words.get(
                            "log.judged", seconds(w.start_s(), words), seconds(w.end_s(), words)))
                .orElse(words.get("log.unjudged"));
    return new LogStrip(
        words.get("log.crank", number, words.get("log.is." + crank.conclusion().id())),
        said,
        span,
        crank.window().map(w -> new Span(w.start_s(), w.end_s())),
        crank.outputs().stream()
            .filter(o -> o.conclusion() == crank.conclusion())
            .flatMap(o -> o.lowestQuarter().stream())
            .findFirst(),
        crank.supplies().stream().findFirst().map(s -> new InputZones(s.good_V(), s.tolerated_V())),
        silent ? low(crank, words) : Optional.empty(),
        crank.traces().stream().map(t -> within(t, span)).toList());
  }

  private static LogStrip whole(LogReading log, Words words) {
    double from = log.pace().first_s();
    double to = log.pace().last_s();
    boolean some = to > from;
    return new LogStrip(
        words.get("log.none"),
        "",
        some ? new Span(from, to) : new Span(0, 1),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        some ? log.overview() : List.of());
  }

  private static Trace within(Trace t, Span span) {
    return new Trace(
        t.title(),
        t.role(),
        t.dots().stream().filter(d -> d.t_s() >= span.from() && d.t_s() <= span.to()).toList());
  }

  /** Where the worst supply was read to be too low: its lowest dot in the judged time. */
  private static Optional<Scene.Point> low(Crank crank, Words words) {
    Optional<Supply> worst =
        crank.supplies().stream()
            .filter(s -> s.qualifier().isPresent() && s.minimum().isPresent())
            .max(Comparator.comparing(s -> s.qualifier().orElseThrow()));
    return worst.flatMap(
        s ->
            crank.traces().stream()
                .filter(t -> t.role() == Role.SUPPLY && t.title().equals(s.name()))
                .flatMap(t -> t.dots().stream())
                .filter(
                    d -> crank.window().filter(w -> inside(d, w.start_s(), w.end_s())).isPresent())
                .min(Comparator.comparingDouble(Dot::value))
                .map(
                    d ->
                        new Scene.Point(
                            d.t_s(),
                            d.value(),
                            Words.tied(words.numerals().withU(s.minimum().orElseThrow())))));
  }

  private static boolean inside(Dot dot, double from_s, double to_s) {
    return dot.t_s() >= from_s && dot.t_s() <= to_s;
  }

  boolean judges(Dot dot) {
    return judged.filter(w -> inside(dot, w.from(), w.to())).isPresent();
  }

  private static String seconds(double s, Words words) {
    return words.numerals().plain(Math.round(s * 10) / 10.0);
  }
}
