package corewright.station.web.shop;

import corewright.measures.Figures;
import corewright.measures.statistics.Interval;
import corewright.reports.ledger.Deposits.Deposit;
import corewright.reports.ledger.Stores.Lot;
import corewright.station.web.When;
import corewright.station.web.shop.Counting.Counted;
import corewright.station.work.Cover;
import corewright.station.work.InWork;
import corewright.station.work.OpenToday;
import corewright.station.work.Returns;
import corewright.station.work.ShopFigures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the owner looks at, in words. */
public record ShopPage(
    String counted,
    List<RateTable> tables,
    List<Month> months,
    int highest,
    String weibull,
    String turnaround,
    Survival survival,
    List<InWork> work,
    List<Cover> cover,
    List<Open> pending,
    int questions,
    List<Owed> owed,
    String owedInAll,
    List<Lot> lots) {
  private static final int BAR = 200;

  /** Longer lists are found, not read. */
  private static final int MOST = 100;

  /**
   * One month of shipping.
   *
   * @param bar how long its bar is, {@code backBar} the part of it that came back
   * @param back how many came back, with the months in service after which they did
   */
  public record Month(
      String month,
      int shipped,
      int back,
      int inService,
      String after,
      double bar,
      double backBar) {}

  /** An open question. */
  public record Open(
      String tag, String question, String owner, String due, boolean overdue, long days) {}

  /** A deposit that is owed. */
  public record Owed(
      String number, String customer, String amount, String due, boolean over, String about) {}

  /** What has no figure yet, as one sentence needs it. */
  public String nothingYet() {
    return String.join(
        "; ",
        tables.stream()
            .filter(t -> t.rows().isEmpty())
            .map(t -> t.title().substring(0, 1).toLowerCase(Locale.ROOT) + t.title().substring(1))
            .toList());
  }

  static ShopPage of(Counted counted, List<Lot> lots, LocalDate today) {
    ShopFigures f = counted.figures();
    OpenToday open = counted.open();
    int highest = f.returns().stream().mapToInt(Returns.Month::shipped).max().orElse(1);
    return new ShopPage(
        When.moment(counted.at()),
        RateTable.of(f),
        f.returns().stream().map(m -> month(m, highest)).toList(),
        highest,
        weibull(f.weibull()),
        turnaround(f.turnaround_days()),
        Survival.of(f.survival()),
        open.work(),
        open.cover(),
        open.questions().stream().limit(MOST).map(ShopPage::open).toList(),
        open.questions().size(),
        open.deposits().stream().limit(MOST).map(d -> owed(d, today)).toList(),
        String.join(", ", open.owed().values().stream().map(Object::toString).toList()),
        lots);
  }

  private static Month month(Returns.Month m, int highest) {
    int back = m.back();
    return new Month(
        m.month(),
        m.shipped(),
        back,
        m.inService(),
        after(m),
        (double) BAR * m.shipped() / highest,
        (double) BAR * back / highest);
  }

  private static String after(Returns.Month m) {
    List<String> after = new ArrayList<>();
    m.returned().forEach((month, tags) -> after.add(tags.size() + " in month " + month));
    if (!m.again().isEmpty()) {
      after.add(m.again().size() + " again without a claim");
    }
    return String.join(", ", after);
  }

  private static String weibull(Returns.Line line) {
    String n = line.failures() + " failed, " + line.inService() + " in service";
    return line.shape().isEmpty()
        ? n + ". No line: " + line.refused() + "."
        : n
            + ". Shape "
            + Figures.number(line.shape().get(), 2)
            + line.shapeInterval().map(i -> " (" + ends(i, 2) + ")").orElse("")
            + ", scale "
            + line.scale_months().map(s -> Figures.number(s, 1)).orElse("")
            + " months"
            + line.scaleInterval().map(i -> " (" + ends(i, 1) + ")").orElse("")
            + ". A shape below 1 speaks of workmanship, about 1 of chance, above 1 of wear.";
  }

  private static String ends(Interval i, int decimals) {
    return Figures.number(i.low(), decimals) + " to " + Figures.number(i.high(), decimals);
  }

  private static String turnaround(ShopFigures.Turnaround t) {
    return t.n() == 0
        ? "Nothing was shipped yet."
        : "From reception to shipping: half within "
            + t.median().orElse(0L)
            + " days"
            + t.medianInterval().map(i -> " (" + ends(i, 0) + ")").orElse("")
            + ", nine of ten within "
            + t.p90().orElse(0L)
            + " days"
            + t.p90Interval().map(i -> " (" + ends(i, 0) + ")").orElse("")
            + "; n = "
            + t.n()
            + ".";
  }

  /** How long something lasts, as people read it. */
  public static String days(Optional<Double> days) {
    return days.map(d -> Figures.number(d, 0) + " days").orElse("none was sold");
  }

  private static Open open(OpenToday.Question q) {
    return new Open(q.tag(), q.question(), q.owner(), When.day(q.due()), q.overdue(), q.age_days());
  }

  private static Owed owed(Deposit d, LocalDate today) {
    return new Owed(
        d.number(),
        d.customer(),
        d.amount().toString(),
        When.day(d.due()),
        d.due().compareTo(today.toString()) < 0,
        d.about());
  }
}
