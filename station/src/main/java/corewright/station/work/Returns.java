package corewright.station.work;

import corewright.measures.reliability.KaplanMeier;
import corewright.measures.reliability.Lifetime;
import corewright.measures.reliability.WeibullFit;
import corewright.measures.statistics.Interval;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.VisitFact;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What came back of what left under warranty. A return is the first claim for a unit that left; it
 * counts as the unit's own failure unless it was classed W3 to W7. A unit that came again without a
 * claim was in service up to then, one that is out up to today.
 */
public final class Returns {
  /** Classes that say that the unit did not fail by itself. */
  private static final Set<String> NOT_ITS_OWN = Set.of("W3", "W4", "W5", "W6", "W7");

  private static final double LEVEL = 0.95;
  private static final double DAYS_IN_A_MONTH = 365.25 / 12;

  private final List<Out> out = new ArrayList<>();
  private final LocalDate today;
  private final List<Lifetime> lifetimes;

  /**
   * A sealed unit that left.
   *
   * @param back under claim
   * @param again received again, whether under a claim or not
   */
  private record Out(
      String tag,
      LocalDate left,
      Optional<LocalDate> back,
      Optional<LocalDate> again,
      boolean failed) {

    boolean cameWithoutAClaim() {
      return back.isEmpty() && again.isPresent();
    }

    LocalDate end(LocalDate today) {
      return back.or(() -> again).orElse(today);
    }
  }

  /**
   * Looks at what left.
   *
   * @param later visits of any time; those that are a unit's second or later one end the one before
   */
  Returns(
      List<VisitFact> visits,
      List<VisitFact> later,
      List<Claim> claims,
      LocalDate today,
      ZoneId zone) {
    this.today = today;
    Map<String, LocalDate> begun = new HashMap<>();
    for (VisitFact v : later) {
      if (v.visit() > 1) {
        begun.put(v.tag() + "/" + v.visit(), v.received());
      }
    }
    Map<String, Map<Integer, Claim>> first = new HashMap<>();
    claims.forEach(
        c -> first.computeIfAbsent(c.tag(), t -> new HashMap<>()).putIfAbsent(c.shippedVisit(), c));
    for (VisitFact v : visits) {
      if (v.sealed() && v.shipped().isPresent()) {
        Optional<Claim> claim =
            Optional.ofNullable(first.getOrDefault(v.tag(), Map.of()).get(v.visit()));
        out.add(
            new Out(
                v.tag(),
                v.shipped().get(),
                claim.map(c -> WallClock.day(c.opened(), zone)),
                begun.isEmpty()
                    ? Optional.empty()
                    : Optional.ofNullable(begun.get(v.tag() + "/" + (v.visit() + 1))),
                claim.filter(c -> !NOT_ITS_OWN.contains(c.claimClass())).isPresent()));
      }
    }
    lifetimes = lifetimes();
  }

  /**
   * One month of shipping.
   *
   * @param shipped how many left in it
   * @param returned how many came back, by completed months in service
   * @param again who came again without a claim
   * @param inService how many are still out
   */
  public record Month(
      String month,
      int shipped,
      Map<Integer, List<String>> returned,
      List<String> again,
      int inService) {

    /** How many came back under claim. */
    public int back() {
      return returned.values().stream().mapToInt(List::size).sum();
    }
  }

  /** The ship-month table. */
  List<Month> table() {
    Map<YearMonth, List<Out>> months = new TreeMap<>();
    out.forEach(o -> months.computeIfAbsent(YearMonth.from(o.left), m -> new ArrayList<>()).add(o));
    List<Month> table = new ArrayList<>();
    months.forEach(
        (month, all) -> {
          Map<Integer, List<String>> returned = new TreeMap<>();
          for (Out o : all) {
            o.back.ifPresent(
                b ->
                    returned
                        .computeIfAbsent(
                            (int) ChronoUnit.MONTHS.between(o.left, b), k -> new ArrayList<>())
                        .add(o.tag));
          }
          List<String> again = all.stream().filter(Out::cameWithoutAClaim).map(Out::tag).toList();
          int out = (int) all.stream().filter(o -> o.back.or(() -> o.again).isEmpty()).count();
          table.add(new Month(month.toString(), all.size(), returned, again, out));
        });
    return table;
  }

  /** Back within some days, among those that left at least so long ago. */
  Rate within(int days) {
    List<String> hits = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (Out o : out) {
      if (!o.left.plusDays(days).isAfter(today)) {
        boolean early = o.back.filter(b -> !b.isAfter(o.left.plusDays(days))).isPresent();
        (early ? hits : others).add(o.tag);
      }
    }
    return new Rate("back within " + days + " days", hits, others);
  }

  /**
   * A Weibull line, or why there is none.
   *
   * @param shape below 1 workmanship, about 1 chance, above 1 wear
   * @param scale_months by which 63 % have failed
   */
  public record Line(
      long failures,
      long inService,
      Optional<Double> shape,
      Optional<Interval> shapeInterval,
      Optional<Double> scale_months,
      Optional<Interval> scaleInterval,
      String refused) {}

  /**
   * One step down of the share that is still in service (Kaplan and Meier).
   *
   * @param months in service
   * @param interval 95 %, from Greenwood's variance
   * @param tags that failed then
   */
  public record Alive(
      double months,
      long atRisk,
      long failed,
      double share,
      Interval interval,
      List<String> tags) {}

  List<Alive> survival() {
    Map<Double, List<String>> failed = new HashMap<>();
    for (Out o : out) {
      if (o.failed) {
        failed.computeIfAbsent(months(days(o)), m -> new ArrayList<>()).add(o.tag);
      }
    }
    return out.isEmpty()
        ? List.of()
        : KaplanMeier.of(lifetimes).steps().stream()
            .map(
                s ->
                    new Alive(
                        s.time(),
                        s.atRisk(),
                        s.failures(),
                        s.survival(),
                        s.interval(LEVEL),
                        failed.getOrDefault(s.time(), List.of())))
            .toList();
  }

  private long days(Out o) {
    return Math.max(0, ChronoUnit.DAYS.between(o.left, o.end(today)));
  }

  /** Whoever came back on the day they left lasted half of it. */
  private static double months(long days) {
    return Math.max(0.5, (double) days) / DAYS_IN_A_MONTH;
  }

  /** Those that lasted equally long together: a large shop has a million units, and few days. */
  private List<Lifetime> lifetimes() {
    Map<Long, long[]> byDays = new HashMap<>();
    for (Out o : out) {
      byDays.computeIfAbsent(days(o), d -> new long[2])[o.failed ? 1 : 0]++;
    }
    List<Lifetime> equal = new ArrayList<>();
    new TreeMap<>(byDays)
        .forEach(
            (days, count) -> {
              for (int failed = 0; failed < count.length; failed++) {
                if (count[failed] > 0) {
                  equal.add(new Lifetime(months(days), failed == 1, count[failed]));
                }
              }
            });
    return equal;
  }

  Line weibull() {
    long failures = out.stream().filter(Out::failed).count();
    long inService = out.size() - failures;
    try {
      WeibullFit fit = WeibullFit.of(lifetimes);
      return new Line(
          failures,
          inService,
          Optional.of(fit.shape()),
          Optional.of(fit.shapeInterval(LEVEL)),
          Optional.of(fit.scale()),
          Optional.of(fit.scaleInterval(LEVEL)),
          "");
    } catch (IllegalArgumentException tooFew) {
      return new Line(
          failures,
          inService,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          String.valueOf(tooFew.getMessage()));
    }
  }
}
