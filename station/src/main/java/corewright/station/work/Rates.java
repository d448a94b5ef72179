package corewright.station.work;

import corewright.reports.ledger.VisitFact;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/** Rates among visits: which count, what they are counted among, and how they are split. */
final class Rates {
  /** As {@link VisitFact#cold} says it. */
  private static final String ALONE = "ALONE";

  private Rates() {}

  /** Rebuilds that can be sold among those that are finished, by variant. */
  static List<Rate> sellable(List<VisitFact> visits) {
    return by(visits, Rates::isFinishedRebuild, VisitFact::sealed, Rates::build);
  }

  /** Final tests passed at the first try. */
  static List<Rate> firstPass(List<VisitFact> visits, Function<VisitFact, String> split) {
    return by(visits, v -> !v.firstShip().isEmpty(), v -> v.firstShip().equals("PASS"), split);
  }

  /** Units sent back because nothing was found, among all that were decided about. */
  static List<Rate> noFaultFound(List<VisitFact> visits, Function<VisitFact, String> split) {
    return by(
        visits,
        v -> !v.disposition().isEmpty() && !v.disposition().equals("PENDING"),
        v -> v.disposition().equals("RETURN") && v.arrival().equals("PASS"),
        split);
  }

  /** What a diagnosis without a fault rests on: in which air the core was tested as it came. */
  static String tested(VisitFact v) {
    boolean cold = !v.cold().isEmpty();
    boolean hot = !v.hot().isEmpty();
    return cold && hot
        ? "tested cold and hot"
        : cold ? "tested cold" : hot ? "tested hot" : "at room temperature alone";
  }

  /** Cores that failed nowhere else, among those tested cold, and among those tested hot. */
  static List<Rate> failedNowhereElse(List<VisitFact> visits) {
    List<Rate> rates =
        new ArrayList<>(
            by(
                visits,
                v -> !v.cold().isEmpty(),
                v -> v.cold().equals(ALONE),
                v -> "in the cold alone"));
    rates.addAll(
        by(visits, v -> !v.hot().isEmpty(), v -> v.hot().equals(ALONE), v -> "in the heat alone"));
    return rates;
  }

  /** Units that left until the day that was promised; open is what is here and not due yet. */
  static List<Rate> promisesKept(List<VisitFact> visits, LocalDate today) {
    return by(
        visits,
        v ->
            v.promised()
                .filter(day -> v.shipped().isPresent() || isMissed(v, day, today))
                .isPresent(),
        v -> v.shipped().isPresent() && !v.shipped().get().isAfter(v.promised().orElseThrow()),
        v -> "");
  }

  /** What was taken apart or scrapped was replaced, and its own day counts no more. */
  private static boolean isMissed(VisitFact v, LocalDate day, LocalDate today) {
    return day.isBefore(today) && !v.stage().equals("HARVESTED") && !v.stage().equals("SCRAPPED");
  }

  static List<Rate> by(
      List<VisitFact> visits,
      Predicate<VisitFact> looked,
      Predicate<VisitFact> hit,
      Function<VisitFact, String> split) {
    Map<String, Split> groups = new HashMap<>();
    for (VisitFact v : visits) {
      if (looked.test(v)) {
        Split group = groups.computeIfAbsent(split.apply(v), g -> new Split());
        (hit.test(v) ? group.hits : group.others).add(v.tag());
      }
    }
    List<Rate> rates = new ArrayList<>();
    new TreeMap<>(groups)
        .forEach((group, both) -> rates.add(new Rate(group, both.hits, both.others)));
    return rates;
  }

  /** Tags of one group. */
  private static final class Split {
    private final List<String> hits = new ArrayList<>();
    private final List<String> others = new ArrayList<>();
  }

  static String build(VisitFact v) {
    return v.family() + " " + (v.variant().isEmpty() ? "(build unknown)" : v.variant());
  }

  /** Started, and neither waiting nor on the way. */
  private static boolean isFinishedRebuild(VisitFact v) {
    return v.disposition().equals("REBUILD")
        && switch (v.stage()) {
          case "SEALED", "PACKED", "SHIPPED", "IN_STOCK", "HARVESTED", "SCRAPPED" -> true;
          default -> false;
        };
  }
}
