package corewright.station.work;

import corewright.reports.ledger.VisitFact;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/** Rates among visits: which count, what they are counted among, and how they are split. */
final class Rates {
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

  static List<Rate> by(
      List<VisitFact> visits,
      Predicate<VisitFact> looked,
      Predicate<VisitFact> hit,
      Function<VisitFact, String> split) {
    Map<String, List<VisitFact>> groups = new TreeMap<>();
    visits.stream()
        .filter(looked)
        .forEach(v -> groups.computeIfAbsent(split.apply(v), g -> new ArrayList<>()).add(v));
    List<Rate> rates = new ArrayList<>();
    groups.forEach(
        (group, all) ->
            rates.add(
                new Rate(
                    group,
                    all.stream().filter(hit).map(VisitFact::tag).toList(),
                    all.stream().filter(hit.negate()).map(VisitFact::tag).toList())));
    return rates;
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
