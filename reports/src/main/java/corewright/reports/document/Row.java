package corewright.reports.document;

import corewright.bench.record.Finding;
import corewright.bench.record.Qualifier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import corewright.profiles.Limit;
import corewright.reports.chart.Digits;
import corewright.reports.chart.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * One row of the readings, in words.
 *
 * @param id what it is about, the same in every run of one profile
 * @param form the outcome's form; empty where it has none
 */
record Row(
    String id,
    String title,
    String value,
    String u,
    String limit,
    String margin,
    Optional<String> form,
    String outcome) {

  /** The value with its U and unit, where it stands beside one of another run. */
  String withU() {
    return value.equals(NONE) ? NONE : value + " " + u;
  }

  /** Whether a page that is short of room may leave it to the record. */
  boolean minor() {
    return !id.equals(INPUT)
        && form.filter(f -> f.equals("FAIL") || f.equals("MARGINAL")).isEmpty();
  }

  private static final String INPUT = "input";
  private static final String NONE = "–";

  /** One row for each limit, where it was met worst, and one for the input. */
  static List<Row> rows(Page page, RunRecord run) {
    Map<String, Finding> worst = new LinkedHashMap<>();
    for (Finding finding : run.judgement().findings()) {
      worst.merge(finding.limit().id(), finding, Row::worse);
    }
    List<Row> rows = new ArrayList<>();
    worst.values().stream()
        .sorted(Comparator.comparing(f -> !f.limit().headline()))
        .forEach(finding -> rows.add(of(page, run, finding)));
    input(page, run).ifPresent(rows::add);
    return rows;
  }

  /** Of two findings of one limit the one that says more against the unit. */
  private static Finding worse(Finding a, Finding b) {
    int byOutcome = Integer.compare(weight(a), weight(b));
    if (byOutcome != 0) {
      return byOutcome > 0 ? a : b;
    }
    return relative(a) <= relative(b) ? a : b;
  }

  private static int weight(Finding finding) {
    return switch (finding.outcome()) {
      case FAIL -> 3;
      case MARGINAL -> 2;
      case NOT_MEASURED -> 1;
      case PASS -> 0;
    };
  }

  /** Margin as a part of the limit: limits of load steps grow with the step. */
  private static double relative(Finding finding) {
    double scale = Math.max(Math.abs(finding.limit().pass()), 1e-12);
    return finding.margin().orElse(0.0) / scale;
  }

  private static Row of(Page page, RunRecord run, Finding finding) {
    Limit limit = finding.limit();
    Optional<Measurement> m = finding.measurement();
    Digits digits = Digits.of(limit, page.words().numerals());
    String side = limit.side() == Limit.Side.AT_LEAST ? "limit.at-least" : "limit.at-most";
    boolean judged = judged(run) && finding.outcome() != Finding.Outcome.NOT_MEASURED;
    String outcome = judged(run) ? finding.outcome().name() : "NOT_JUDGED";
    return new Row(
        limit.id(),
        page.quantity(limit.quantity()) + load(page, run, finding.hold()),
        m.map(digits::value).orElse(NONE),
        m.map(digits::u).orElse(page.kept(finding.note(), 44)),
        page.say(side, digits.limit(limit, m)),
        m.flatMap(v -> finding.margin().map(margin -> digits.marginWithUnit(margin, v)))
            .orElse(NONE),
        judged ? Optional.of(outcome) : Optional.empty(),
        page.say("outcome." + outcome));
  }

  /** What was read in a VOID run is a reading, and no more than that. */
  private static boolean judged(RunRecord run) {
    return run.judgement().verdict().filter(v -> v == Verdict.VOID).isEmpty();
  }

  /** The load of a hold behind the name of a quantity; nothing where there was none. */
  static String load(Page page, RunRecord run, int hold) {
    return holds(run).stream()
        .filter(h -> h.index() == hold)
        .flatMap(h -> h.value(Quantity.LOAD).stream())
        .findFirst()
        .map(load -> Words.tied(", " + page.say("at-load", page.number(load.value(), 2))))
        .orElse("");
  }

  /** The lowest 1 ms median of every judged hold: what the input qualifier was taken from. */
  private static Optional<Row> input(Page page, RunRecord run) {
    return holds(run).stream()
        .filter(hold -> run.judgement().findings().stream().anyMatch(f -> f.hold() == hold.index()))
        .flatMap(hold -> hold.feeds().stream())
        .map(FeedReadings::lowestMedian)
        .flatMap(reading -> reading.measurement().stream())
        .min(Comparator.comparingDouble(Measurement::value))
        .map(lowest -> input(page, run, lowest));
  }

  private static Row input(Page page, RunRecord run, Measurement lowest) {
    Optional<Double> good =
        page.profile()
            .filter(p -> !p.feeds().isEmpty())
            .map(p -> p.feeds().get(0).zones().good_V())
            .or(() -> page.family().map(Family::zones).map(z -> z.good_V()));
    Digits volts = Digits.of(lowest.unit(), lowest.value(), page.words().numerals());
    Optional<Qualifier> qualifier = run.judgement().qualifier();
    return new Row(
        INPUT,
        page.say("quantity.inputLowest"),
        volts.value(lowest),
        volts.u(lowest),
        good.map(v -> page.say("limit.at-least", volts.marginWithUnit(v, lowest))).orElse(NONE),
        good.map(v -> volts.marginWithUnit(lowest.value() - v, lowest)).orElse(NONE),
        qualifier.filter(q -> q == Qualifier.VOID).map(Qualifier::name),
        qualifier.map(q -> page.say("zone." + q.name().toLowerCase(Locale.ROOT))).orElse(""));
  }

  private static List<MeasuredHold> holds(RunRecord run) {
    return run.measured().map(MeasuredRun::holds).orElse(List.of());
  }
}
