package corewright.station.work;

import corewright.reports.ledger.VisitFact;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * How long the stock of one build lasts at the pace at which it was sold of late. What belongs to a
 * customer does not draw on it.
 *
 * @param ready sealed units in stock
 * @param cores units in stock that are not sealed
 * @param sold sealed units of the shop's own that left within {@link #WINDOW_DAYS}
 */
public record Cover(String build, List<String> ready, List<String> cores, List<String> sold) {
  /** Eight weeks. Common practice, no source. */
  public static final int WINDOW_DAYS = 56;

  public Cover {
    ready = List.copyOf(ready);
    cores = List.copyOf(cores);
    sold = List.copyOf(sold);
  }

  /** First day of the window that ends today. */
  static LocalDate since(LocalDate today) {
    return today.minusDays(WINDOW_DAYS - 1L);
  }

  /** How many days the ready ones last; empty where none was sold of late. */
  public Optional<Double> ready_days() {
    return days(ready.size());
  }

  /** How many days they and the cores last, if each core becomes a unit that can be sold. */
  public Optional<Double> all_days() {
    return days(ready.size() + cores.size());
  }

  private Optional<Double> days(int units) {
    return sold.isEmpty()
        ? Optional.empty()
        : Optional.of((double) units * WINDOW_DAYS / sold.size());
  }

  /**
   * By build, of what is in stock or was sold of late.
   *
   * @param stocked visits whose units are in stock
   * @param left visits whose units left within the window
   */
  static List<Cover> of(List<VisitFact> stocked, List<VisitFact> left) {
    List<VisitFact> sold = left.stream().filter(Cover::isOwn).filter(VisitFact::sealed).toList();
    Set<String> builds = new TreeSet<>();
    Stream.concat(stocked.stream(), sold.stream()).map(Rates::build).forEach(builds::add);
    return builds.stream()
        .map(
            build ->
                new Cover(
                    build,
                    tags(stocked, build, VisitFact::sealed),
                    tags(stocked, build, v -> !v.sealed()),
                    tags(sold, build, v -> true)))
        .toList();
  }

  /** An exchanged or bought core is the shop's own; what came for a repair is its customer's. */
  private static boolean isOwn(VisitFact v) {
    return v.mode().equals("exchange") || v.mode().equals("stock");
  }

  private static List<String> tags(
      List<VisitFact> visits, String build, Predicate<VisitFact> which) {
    return visits.stream()
        .filter(v -> Rates.build(v).equals(build))
        .filter(which)
        .map(VisitFact::tag)
        .toList();
  }
}
