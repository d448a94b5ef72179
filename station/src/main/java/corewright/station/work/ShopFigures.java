package corewright.station.work;

import corewright.measures.statistics.Interval;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.Facts;
import corewright.reports.ledger.Facts.Confirmed;
import corewright.reports.ledger.VisitFact;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What the owner looks at, counted from the record: every number with n, its interval and the tags
 * behind it.
 *
 * @param yield finished rebuilds that can be sold, by variant
 * @param firstPassByTechnician final tests passed at the first try
 * @param firstPassByBench likewise
 * @param noFaultFound of everything decided about, then by customer
 * @param noFaultByTest the same by the air in which the cores were tested
 * @param failedNowhereElse what only the cold, and only the heat, brought to light
 * @param promisesKept of units that were promised for a day, and have left or are late
 * @param suppliers yield of bought cores by supplier; in order of yield only where n is enough
 * @param faults confirmed by teardown, most frequent first
 * @param predicted share of confirmed faults that were the expected ones
 * @param expected which were expected, by what was confirmed: tags by expectation
 * @param returns ship-month table
 * @param early back within 30 and 90 days
 * @param survival share that is still in service, by months in service
 * @param scorecards what each supplier's cores came to
 * @param turnaround_days from reception to shipping
 */
public record ShopFigures(
    List<Rate> yield,
    List<Rate> firstPassByTechnician,
    List<Rate> firstPassByBench,
    List<Rate> noFaultFound,
    List<Rate> noFaultByTest,
    List<Rate> failedNowhereElse,
    List<Rate> promisesKept,
    List<Rate> suppliers,
    List<Rate> faults,
    Rate predicted,
    Map<String, Map<String, List<String>>> expected,
    List<Returns.Month> returns,
    List<Rate> early,
    Returns.Line weibull,
    List<Returns.Alive> survival,
    List<Scorecard> scorecards,
    Turnaround turnaround_days) {

  /** Fewer cores of a supplier are shown and not ranked. Common practice, no source. */
  public static final int ENOUGH_TO_RANK = 20;

  /**
   * Median and 90th percentile by nearest rank; empty where nothing was shipped.
   *
   * @param medianInterval 95 %; empty where too few were shipped for it, as {@code p90Interval}
   * @param within who was shipped within the one and the other
   */
  public record Turnaround(
      int n,
      Optional<Long> median,
      Optional<Interval> medianInterval,
      Optional<Long> p90,
      Optional<Interval> p90Interval,
      List<Rate> within) {}

  /**
   * What is counted.
   *
   * @param byShipment whether the days are those of shipment, not of reception
   */
  public record Period(Optional<LocalDate> from, Optional<LocalDate> until, boolean byShipment) {
    /**
     * Holds days that follow on one another.
     *
     * @throws Refused if the last is before the first
     */
    public Period {
      if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
        throw new Refused(
            "No day lies from " + from.get() + " until " + until.get(),
            "Give the earlier one first.");
      }
    }

    /** From the beginning, where no first day is given, and until long after this program. */
    List<VisitFact> of(Facts facts) {
      if (isAlways()) {
        return facts.visits();
      }
      LocalDate first = from.orElse(LocalDate.of(1000, 1, 1));
      LocalDate last = until.orElse(LocalDate.of(9999, 12, 31));
      return byShipment ? facts.shipped(first, last) : facts.received(first, last);
    }

    boolean isAlways() {
      return from.isEmpty() && until.isEmpty();
    }

    boolean holds(VisitFact v) {
      if (isAlways()) {
        return true;
      }
      return (byShipment ? v.shipped() : Optional.of(v.received()))
          .filter(day -> from.filter(day::isBefore).isEmpty())
          .filter(day -> until.filter(day::isAfter).isEmpty())
          .isPresent();
    }
  }

  /**
   * Counts.
   *
   * @param all visits, of which those of the period count
   * @param later visits with which a unit came again, of any time; others in it do no harm
   */
  static ShopFigures of(
      List<VisitFact> all,
      List<VisitFact> later,
      List<Claim> claims,
      List<Confirmed> confirmed,
      Period period,
      LocalDate today,
      ZoneId zone) {
    List<VisitFact> visits = all.stream().filter(period::holds).toList();
    Returns returns = new Returns(visits, later, claims, today, zone);
    List<Rate> noFault = new ArrayList<>(Rates.noFaultFound(visits, v -> ""));
    noFault.addAll(Rates.noFaultFound(visits, VisitFact::customer));
    List<Confirmed> faults = of(visits, confirmed);
    return new ShopFigures(
        Rates.sellable(visits),
        Rates.firstPass(visits, v -> v.technician().isEmpty() ? "(nobody named)" : v.technician()),
        Rates.firstPass(visits, VisitFact::shipBench),
        noFault,
        Rates.noFaultFound(visits, Rates::tested),
        Rates.failedNowhereElse(visits),
        Rates.promisesKept(visits, today),
        suppliers(visits),
        pareto(faults),
        new Rate(
            "",
            tags(faults.stream().filter(c -> c.predicted().equals(c.fault())).toList()),
            tags(faults.stream().filter(c -> !c.predicted().equals(c.fault())).toList())),
        expected(faults),
        returns.table(),
        List.of(returns.within(30), returns.within(90)),
        returns.weibull(),
        returns.survival(),
        Scorecard.of(visits, claims),
        turnaround(visits));
  }

  /** Those that were confirmed on a visit that counts: few among many. */
  private static List<Confirmed> of(List<VisitFact> visits, List<Confirmed> confirmed) {
    Set<String> tags = new HashSet<>(tags(confirmed));
    Set<String> counted = new HashSet<>();
    for (VisitFact v : visits) {
      if (tags.contains(v.tag())) {
        counted.add(v.tag() + "/" + v.visit());
      }
    }
    return confirmed.stream().filter(c -> counted.contains(c.tag() + "/" + c.visit())).toList();
  }

  private static List<Rate> suppliers(List<VisitFact> visits) {
    List<Rate> rates =
        Rates.by(
            visits.stream().filter(v -> v.mode().equals("stock")).toList(),
            v -> !v.disposition().isEmpty() && !v.disposition().equals("PENDING"),
            VisitFact::sealed,
            VisitFact::customer);
    List<Rate> ranked =
        new ArrayList<>(rates.stream().filter(r -> r.n() >= ENOUGH_TO_RANK).toList());
    ranked.sort(
        Comparator.comparingDouble((Rate r) -> (double) r.hits().size() / r.n()).reversed());
    rates.stream().filter(r -> r.n() < ENOUGH_TO_RANK).forEach(ranked::add);
    return ranked;
  }

  private static List<Rate> pareto(List<Confirmed> faults) {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    faults.forEach(c -> groups.computeIfAbsent(c.fault(), g -> new ArrayList<>()).add(c.tag()));
    List<Rate> rates = new ArrayList<>();
    groups.forEach(
        (group, hits) ->
            rates.add(
                new Rate(
                    group,
                    hits,
                    tags(faults.stream().filter(c -> !c.fault().equals(group)).toList()))));
    rates.sort(Comparator.comparingInt((Rate r) -> r.hits().size()).reversed());
    return rates;
  }

  private static Map<String, Map<String, List<String>>> expected(List<Confirmed> faults) {
    Map<String, Map<String, List<String>>> table = new TreeMap<>();
    for (Confirmed c : faults) {
      table
          .computeIfAbsent(c.fault(), f -> new TreeMap<>())
          .computeIfAbsent(
              c.predicted().isEmpty() ? "(nothing)" : c.predicted(), p -> new ArrayList<>())
          .add(c.tag());
    }
    return table;
  }

  private static Turnaround turnaround(List<VisitFact> visits) {
    DaysTaken days = DaysTaken.toShip(visits);
    Optional<Long> median = days.rank(0.5);
    Optional<Long> p90 = days.rank(0.9);
    return new Turnaround(
        days.n(),
        median,
        days.interval(0.5),
        p90,
        days.interval(0.9),
        Stream.of(median, p90).flatMap(Optional::stream).distinct().map(days::within).toList());
  }

  private static List<String> tags(List<Confirmed> confirmed) {
    return confirmed.stream().map(Confirmed::tag).toList();
  }
}
