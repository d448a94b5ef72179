package corewright.station.work;

import corewright.measures.statistics.Interval;
import corewright.measures.statistics.QuantileRanks;
import corewright.reports.ledger.VisitFact;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Who took how long: a million visits take few different numbers of days.
 *
 * @param tags by days
 */
record DaysTaken(int n, SortedMap<Long, List<String>> tags) {
  private static final double LEVEL = 0.95;

  /** From reception to shipping, of those that left. */
  static DaysTaken toShip(List<VisitFact> visits) {
    SortedMap<Long, List<String>> days = new TreeMap<>();
    int n = 0;
    for (VisitFact v : visits) {
      if (v.shipped().isPresent()) {
        days.computeIfAbsent(
                v.shipped().get().toEpochDay() - v.received().toEpochDay(), d -> new ArrayList<>())
            .add(v.tag());
        n++;
      }
    }
    return new DaysTaken(n, days);
  }

  /** The days within which a share of them was done, by nearest rank; empty where none was. */
  Optional<Long> rank(double share) {
    return n == 0 ? Optional.empty() : Optional.of(at((int) Math.ceil(share * n)));
  }

  /** Its 95 % interval, whatever the days are distributed like; empty where they are too few. */
  Optional<Interval> interval(double share) {
    if (n == 0) {
      return Optional.empty();
    }
    QuantileRanks ranks = QuantileRanks.of(n, share, LEVEL);
    return ranks.low() < 1 || ranks.high() > n
        ? Optional.empty()
        : Optional.of(new Interval(at(ranks.low()), at(ranks.high()), LEVEL));
  }

  /** Who was done within some days, among all that were. */
  Rate within(long days) {
    return new Rate(
        "within " + days + " days",
        together(tags.headMap(days + 1)),
        together(tags.tailMap(days + 1)));
  }

  private long at(int rank) {
    int seen = 0;
    for (Map.Entry<Long, List<String>> some : tags.entrySet()) {
      seen += some.getValue().size();
      if (seen >= rank) {
        return some.getKey();
      }
    }
    return tags.lastKey();
  }

  private static List<String> together(Map<Long, List<String>> some) {
    List<String> all = new ArrayList<>();
    some.values().forEach(all::addAll);
    return all;
  }
}
