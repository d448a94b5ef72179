package corewright.station.web.did;

import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.measures.Chance;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Limit;
import corewright.reports.chart.Digits;
import corewright.reports.chart.Numerals;
import corewright.reports.chart.Words;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The findings of a run as rows: value, U, limit and margin end at the same digit. */
public final class Readings {
  private static final String NONE = "–";

  private final RunRecord run;
  private final Numerals numerals;

  Readings(RunRecord run, Numerals numerals) {
    this.run = run;
    this.numerals = numerals;
  }

  /**
   * One row.
   *
   * @param id of the limit
   * @param word the outcome; none of a verdict where nothing was judged
   * @param form the outcome's outline; empty where it has none
   * @param sure probability that the limit is met, in words; {@code –} where nothing was measured
   * @param note why there is no reading, or what to know about it; often empty
   */
  public record Row(
      String id,
      String title,
      String value,
      String u,
      String limit,
      String margin,
      String form,
      String word,
      String sure,
      String note) {}

  /** The rows of a run by limit, where each was met worst; the headline first. */
  public static List<Row> worst(RunRecord run, Numerals numerals) {
    return new Readings(run, numerals).worst();
  }

  /** One row a limit, where it was met worst; the headline first. */
  List<Row> worst() {
    Map<String, Finding> worst = new LinkedHashMap<>();
    run.judgement()
        .findings()
        .forEach(f -> worst.merge(f.limit().id(), f, (a, b) -> weight(b) > weight(a) ? b : a));
    return worst.values().stream()
        .sorted(
            Comparator.<Finding>comparingInt(f -> f.limit().headline() ? 0 : 1)
                .thenComparing(Comparator.comparingDouble(Readings::weight).reversed()))
        .map(this::row)
        .toList();
  }

  /** Every finding, in the order of the holds. */
  List<Row> all() {
    return run.judgement().findings().stream().map(this::row).toList();
  }

  /** The lowest input of the holds that were held against something; empty without one. */
  Optional<String> input() {
    return holds()
        .filter(h -> run.judgement().findings().stream().anyMatch(f -> f.hold() == h.index()))
        .flatMap(h -> h.feeds().stream())
        .map(FeedReadings::lowestMedian)
        .flatMap(reading -> reading.measurement().stream())
        .min(Comparator.comparingDouble(Measurement::value))
        .map(numerals::withU)
        .map(Words::tied);
  }

  private Row row(Finding f) {
    Limit limit = f.limit();
    Optional<Measurement> m = f.measurement();
    Digits digits = Digits.of(limit, numerals);
    String outcome = outcome(f);
    return new Row(
        limit.id(),
        limit.quantity().title() + load(f.hold()),
        m.map(digits::value).orElse(NONE),
        m.map(digits::u).orElse(""),
        digits.limit(limit, m)
            + (limit.side() == Limit.Side.AT_LEAST ? " or more" : " or less")
            + band(f, digits),
        m.flatMap(v -> f.margin().map(margin -> digits.margin(margin, v))).orElse(NONE),
        outcome.equals("not judged") || outcome.equals("not measured") ? "" : outcome,
        outcome,
        isVoid() ? NONE : f.conformity().map(Chance::words).orElse(NONE),
        f.note());
  }

  /** Why a reading beyond its limit has not failed; empty of every other. */
  private static String band(Finding f, Digits digits) {
    Limit limit = f.limit();
    if (f.outcome() != Finding.Outcome.MARGINAL || limit.pass() == limit.fail()) {
      return "";
    }
    String side = limit.side() == Limit.Side.AT_LEAST ? "; fails below " : "; fails above ";
    return side + digits.failing(limit, f.measurement());
  }

  /** What was read in a VOID run is a reading, and no more than that. */
  private String outcome(Finding f) {
    if (isVoid()) {
      return "not judged";
    }
    return f.outcome() == Finding.Outcome.NOT_MEASURED
        ? "not measured"
        : f.outcome().name().toUpperCase(Locale.ROOT);
  }

  private boolean isVoid() {
    return run.judgement().verdict().filter(v -> v == Verdict.VOID).isPresent();
  }

  private String load(int hold) {
    return holds()
        .filter(h -> h.index() == hold)
        .flatMap(h -> h.value(Quantity.LOAD).stream())
        .findFirst()
        .map(load -> Words.tied(" at " + numerals.number(load.value(), 2) + " A"))
        .orElse("");
  }

  private Stream<MeasuredHold> holds() {
    return run.measured().map(MeasuredRun::holds).orElse(List.of()).stream();
  }

  /** How much it says against the unit; a smaller margin, as a part of its limit, says more. */
  private static double weight(Finding f) {
    double scale = Math.max(Math.abs(f.limit().pass()), 1e-12);
    double margin = Math.atan(f.margin().orElse(0.0) / scale) / Math.PI; // within ± 0.5
    return switch (f.outcome()) {
          case FAIL -> 3;
          case MARGINAL -> 2;
          case NOT_MEASURED -> 1;
          case PASS -> 0;
        }
        - margin;
  }
}
