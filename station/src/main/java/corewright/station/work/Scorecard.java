package corewright.station.work;

import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.VisitFact;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * What the cores of one supplier came to. Whoever sent fewer than {@link
 * ShopFigures#ENOUGH_TO_RANK} is shown and compared with nobody.
 *
 * @param cores how many came
 * @param sellable sealed, among those that were decided about
 * @param unusable taken apart or scrapped, among those that were decided about
 * @param nothingFound passed as they came, among those that were tested
 * @param claimed back under claim, among those that were sold
 * @param days_to_sell median from reception to shipping; empty where none was sold
 */
public record Scorecard(
    String supplier,
    int cores,
    Rate sellable,
    Rate unusable,
    Rate nothingFound,
    Rate claimed,
    Optional<Long> days_to_sell) {

  static List<Scorecard> of(List<VisitFact> visits, List<Claim> claims) {
    Set<String> claimed = new HashSet<>();
    claims.forEach(c -> claimed.add(c.tag() + "/" + c.shippedVisit()));
    Map<String, List<VisitFact>> suppliers = new TreeMap<>();
    visits.stream()
        .filter(v -> v.mode().equals("stock"))
        .forEach(v -> suppliers.computeIfAbsent(v.customer(), s -> new ArrayList<>()).add(v));
    List<Scorecard> cards = new ArrayList<>();
    suppliers.forEach((supplier, cores) -> cards.add(card(supplier, cores, claimed)));
    return cards;
  }

  private static Scorecard card(String supplier, List<VisitFact> cores, Set<String> claimed) {
    return new Scorecard(
        supplier,
        cores.size(),
        rate(cores, Scorecard::isDecided, VisitFact::sealed),
        rate(
            cores,
            Scorecard::isDecided,
            v -> v.stage().equals("HARVESTED") || v.stage().equals("SCRAPPED")),
        rate(cores, v -> !v.arrival().isEmpty(), v -> v.arrival().equals("PASS")),
        rate(
            cores,
            v -> v.sealed() && v.shipped().isPresent(),
            v -> claimed.contains(v.tag() + "/" + v.visit())),
        DaysTaken.toShip(cores).rank(0.5));
  }

  private static boolean isDecided(VisitFact v) {
    return !v.disposition().isEmpty() && !v.disposition().equals("PENDING");
  }

  private static Rate rate(
      List<VisitFact> cores, Predicate<VisitFact> looked, Predicate<VisitFact> hit) {
    return new Rate(
        "",
        cores.stream().filter(looked.and(hit)).map(VisitFact::tag).toList(),
        cores.stream().filter(looked.and(hit.negate())).map(VisitFact::tag).toList());
  }
}
