package corewright.station.web.shop;

import corewright.measures.Figures;
import corewright.measures.statistics.Interval;
import corewright.station.work.Rate;
import corewright.station.work.Scorecard;
import corewright.station.work.ShopFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Rates of one kind as a table with a picture in each row: the share as a stroke, its interval as
 * the line it stands on. Lengths are those of the drawing.
 *
 * @param key as its address has it
 * @param what what is counted, a clause
 */
public record RateTable(String key, String title, String what, List<Row> rows) {
  static final int WIDTH = 240;
  private static final double EDGE = 6;

  /**
   * One rate.
   *
   * @param at where the share stands; the interval reaches from {@code low} to {@code high}
   */
  public record Row(
      int number,
      String of,
      int hits,
      int n,
      String share,
      String interval,
      double at,
      double low,
      double high) {}

  /** What the table of a key is called. */
  static String title(ShopFigures f, String key) {
    return of(f).stream()
        .filter(t -> t.key.equals(key))
        .map(RateTable::title)
        .findFirst()
        .orElse(key);
  }

  /** Every table of the figures, in the order of the page. */
  static List<RateTable> of(ShopFigures f) {
    return List.of(
        table("yield", "Finished rebuilds that can be sold", "by build", f.yield()),
        table(
            "first-technician",
            "Final tests passed at the first try",
            "by technician",
            f.firstPassByTechnician()),
        table(
            "first-bench",
            "Final tests passed at the first try, by bench",
            "a bench that differs is looked at before the people are",
            f.firstPassByBench()),
        table(
            "no-fault",
            "No fault found",
            "of everything decided about, then by customer",
            f.noFaultFound()),
        table(
            "no-fault-test",
            "No fault found, by what was tested",
            "a pass at room temperature proves too little",
            f.noFaultByTest()),
        table(
            "nowhere-else",
            "Failed nowhere else",
            "of the cores that were tested there",
            f.failedNowhereElse()),
        table(
            "promises",
            "Promises kept",
            "of units promised for a day that have left or are late",
            f.promisesKept()),
        table(
            "suppliers",
            "Bought cores that became a sealed unit",
            "by supplier; ranked from n = " + ShopFigures.ENOUGH_TO_RANK,
            f.suppliers()),
        table("faults", "Faults confirmed by opening", "most frequent first", f.faults()),
        table(
            "predicted",
            "Confirmed as expected from outside",
            "of the faults that were confirmed",
            List.of(f.predicted())),
        table(
            "expected",
            "What was found, and what had been expected",
            "of the faults that were confirmed",
            expected(f)),
        table(
            "card-sellable",
            "Suppliers: sealed",
            "among the cores that were decided about",
            cards(f, Scorecard::sellable)),
        table(
            "card-unusable",
            "Suppliers: taken apart or scrapped",
            "among the cores that were decided about",
            cards(f, Scorecard::unusable)),
        table(
            "card-nothing",
            "Suppliers: passed as they came",
            "among the cores that were tested",
            cards(f, Scorecard::nothingFound)),
        table(
            "card-claimed",
            "Suppliers: back under claim",
            "among those that were sold",
            cards(f, Scorecard::claimed)),
        table(
            "turnaround",
            "From reception to shipping",
            "of those that were shipped: half of them, and nine of ten",
            f.turnaround_days().within()),
        table("early", "Back early", "of those that left at least so long ago", f.early()));
  }

  /** The rates of one table. */
  static List<Rate> rates(ShopFigures f, String key) {
    return switch (key) {
      case "yield" -> f.yield();
      case "first-technician" -> f.firstPassByTechnician();
      case "first-bench" -> f.firstPassByBench();
      case "no-fault" -> f.noFaultFound();
      case "no-fault-test" -> f.noFaultByTest();
      case "nowhere-else" -> f.failedNowhereElse();
      case "promises" -> f.promisesKept();
      case "suppliers" -> f.suppliers();
      case "faults" -> f.faults();
      case "predicted" -> List.of(f.predicted());
      case "expected" -> expected(f);
      case "card-sellable" -> cards(f, Scorecard::sellable);
      case "card-unusable" -> cards(f, Scorecard::unusable);
      case "card-nothing" -> cards(f, Scorecard::nothingFound);
      case "card-claimed" -> cards(f, Scorecard::claimed);
      case "turnaround" -> f.turnaround_days().within();
      case "early" -> f.early();
      default -> List.of();
    };
  }

  /** What was expected, as a share of all of one fault. */
  private static List<Rate> expected(ShopFigures f) {
    List<Rate> rates = new ArrayList<>();
    f.expected()
        .forEach(
            (found, by) ->
                by.forEach(
                    (expected, tags) ->
                        rates.add(
                            new Rate(
                                found + ", expected " + (expected.isEmpty() ? "nothing" : expected),
                                tags,
                                by.entrySet().stream()
                                    .filter(e -> !e.getKey().equals(expected))
                                    .flatMap(e -> e.getValue().stream())
                                    .toList()))));
    return rates;
  }

  private static List<Rate> cards(ShopFigures f, Function<Scorecard, Rate> which) {
    return f.scorecards().stream()
        .map(
            card -> {
              Rate rate = which.apply(card);
              return new Rate(card.supplier(), rate.hits(), rate.others());
            })
        .toList();
  }

  private static RateTable table(String key, String title, String what, List<Rate> rates) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < rates.size(); i++) {
      Rate rate = rates.get(i);
      int number = i;
      rate.interval().ifPresent(interval -> rows.add(row(number, rate, interval)));
    }
    return new RateTable(key, title, what, rows);
  }

  private static Row row(int number, Rate rate, Interval interval) {
    double share = (double) rate.hits().size() / rate.n();
    return new Row(
        number,
        rate.of().isEmpty() ? "all" : rate.of(),
        rate.hits().size(),
        rate.n(),
        Figures.number(100 * share, 0) + " %",
        Figures.number(100 * interval.low(), 0)
            + " to "
            + Figures.number(100 * interval.high(), 0)
            + " %",
        x(share),
        x(interval.low()),
        x(interval.high()));
  }

  private static double x(double share) {
    return Math.rint(10 * (EDGE + share * (WIDTH - 2 * EDGE))) / 10;
  }
}
