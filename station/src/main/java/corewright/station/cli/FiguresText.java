package corewright.station.cli;

import corewright.measures.Figures;
import corewright.measures.statistics.Interval;
import corewright.station.work.Cover;
import corewright.station.work.InWork;
import corewright.station.work.OpenToday;
import corewright.station.work.Rate;
import corewright.station.work.Scorecard;
import corewright.station.work.ShopFigures;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

/** The owner's figures as lines of text. */
final class FiguresText {
  private final PrintWriter out;

  FiguresText(PrintWriter out) {
    this.out = out;
  }

  void print(ShopFigures f, OpenToday open) {
    rates("Yield by variant", f.yield());
    rates("First-pass yield by technician", f.firstPassByTechnician());
    rates("First-pass yield by bench", f.firstPassByBench());
    rates("No fault found", f.noFaultFound());
    rates("No fault found, by what was tested", f.noFaultByTest());
    rates("Failed nowhere else, of those tested there", f.failedNowhereElse());
    rates("Promises kept", f.promisesKept());
    rates("Yield by supplier, ranked from n = " + ShopFigures.ENOUGH_TO_RANK, f.suppliers());
    rates("Confirmed faults", f.faults());
    rates("Confirmed as predicted", List.of(f.predicted()));
    f.expected()
        .forEach(
            (fault, expected) ->
                expected.forEach(
                    (as, tags) ->
                        out.println("  " + fault + ", expected " + as + ": " + tags.size())));
    rates("Returns", f.early());
    f.returns()
        .forEach(
            m ->
                out.println(
                    "  "
                        + m.month()
                        + "  shipped "
                        + m.shipped()
                        + ", in service "
                        + m.inService()
                        + m.returned().entrySet().stream()
                            .map(e -> ", back in month " + e.getKey() + ": " + e.getValue().size())
                            .reduce("", String::concat)
                        + (m.again().isEmpty()
                            ? ""
                            : ", again without a claim: " + m.again().size())));
    f.survival()
        .forEach(
            s ->
                out.println(
                    "  after "
                        + Figures.number(s.months(), 1)
                        + " months "
                        + Figures.number(100 * s.share(), 1)
                        + " % in service ("
                        + Figures.number(100 * s.interval().low(), 1)
                        + " to "
                        + Figures.number(100 * s.interval().high(), 1)
                        + " %), "
                        + s.failed()
                        + " failed of "
                        + s.atRisk()));
    out.println("Weibull: " + weibull(f));
    out.println(
        "Turnaround: n = "
            + f.turnaround_days().n()
            + f.turnaround_days().median().map(d -> ", median " + d + " d").orElse("")
            + days(f.turnaround_days().medianInterval())
            + f.turnaround_days().p90().map(d -> ", 90 % within " + d + " d").orElse("")
            + days(f.turnaround_days().p90Interval()));
    f.scorecards().forEach(card -> out.println("Supplier " + card(card)));
    today(open);
  }

  private void today(OpenToday open) {
    out.println("In work today: " + open.work().stream().mapToInt(w -> w.tags().size()).sum());
    for (InWork w : open.work()) {
      out.println(
          "  "
              + w.stage().words()
              + ": n = "
              + w.tags().size()
              + ", median "
              + w.median_days()
              + " d, oldest "
              + w.oldest_days()
              + " d ("
              + w.tags().get(0)
              + ")");
    }
    out.println("Stock" + (open.cover().isEmpty() ? ": none" : ""));
    open.cover().forEach(c -> out.println("  " + cover(c)));
    out.println("Open questions: " + open.questions().size());
    for (OpenToday.Question q : open.questions()) {
      out.println(
          "  "
              + q.tag()
              + "  "
              + q.age_days()
              + " d"
              + (q.overdue() ? ", OVERDUE since " + q.due() : ", until " + q.due())
              + "  "
              + q.owner()
              + ": "
              + q.question());
    }
    out.println("Deposits owed: " + open.deposits().size());
    open.owed().values().forEach(sum -> out.println("  together " + sum));
    open.deposits()
        .forEach(d -> out.println("  " + d.number() + "  " + d.amount() + ", until " + d.due()));
  }

  private static String cover(Cover c) {
    return c.build()
        + ": "
        + c.ready().size()
        + " ready, "
        + c.cores().size()
        + " cores; "
        + c.sold().size()
        + " sold in "
        + Cover.WINDOW_DAYS
        + " days"
        + c.ready_days().map(d -> ": ready for " + Figures.number(d, 0) + " days").orElse("")
        + c.all_days().map(d -> ", with the cores " + Figures.number(d, 0)).orElse("");
  }

  private static String card(Scorecard card) {
    return card.supplier()
        + ": "
        + card.cores()
        + (card.cores() == 1 ? " core, sellable " : " cores, sellable ")
        + share(card.sellable())
        + ", unusable "
        + share(card.unusable())
        + ", nothing found "
        + share(card.nothingFound())
        + ", claimed "
        + share(card.claimed())
        + card.days_to_sell().map(d -> ", median " + d + " d to sell").orElse("");
  }

  private static String share(Rate rate) {
    return rate.hits().size()
        + " of "
        + rate.n()
        + rate.interval()
            .map(
                i ->
                    " ("
                        + Figures.number(100 * i.low(), 0)
                        + " to "
                        + Figures.number(100 * i.high(), 0)
                        + " %)")
            .orElse("");
  }

  private static String days(Optional<Interval> interval) {
    return interval.map(i -> " (" + ends(i, 0) + ")").orElse("");
  }

  private static String weibull(ShopFigures f) {
    String n = f.weibull().failures() + " failed, " + f.weibull().inService() + " in service";
    return f.weibull().shape().isEmpty()
        ? n + "; no line: " + f.weibull().refused()
        : n
            + "; shape "
            + Figures.number(f.weibull().shape().get(), 2)
            + f.weibull().shapeInterval().map(i -> " (" + ends(i, 2) + ")").orElse("")
            + ", scale "
            + f.weibull().scale_months().map(s -> Figures.number(s, 1)).orElse("")
            + " months"
            + f.weibull().scaleInterval().map(i -> " (" + ends(i, 1) + ")").orElse("");
  }

  private void rates(String title, List<Rate> rates) {
    out.println(title + (rates.stream().allMatch(r -> r.n() == 0) ? ": none yet" : ""));
    for (Rate r : rates) {
      r.interval()
          .ifPresent(
              i ->
                  out.println(
                      "  "
                          + (r.of().isEmpty() ? "all" : r.of())
                          + ": "
                          + r.hits().size()
                          + " of "
                          + r.n()
                          + ", "
                          + Figures.number(100.0 * r.hits().size() / r.n(), 0)
                          + " % ("
                          + Figures.number(100 * i.low(), 0)
                          + " to "
                          + Figures.number(100 * i.high(), 0)
                          + " %)"));
    }
  }

  private static String ends(Interval i, int decimals) {
    return Figures.number(i.low(), decimals) + " to " + Figures.number(i.high(), decimals);
  }
}
