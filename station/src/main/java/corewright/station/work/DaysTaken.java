package corewright.station.work;

import corewright.reports.ledger.VisitFact;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How many took how long: a million visits take few different numbers of days.
 *
 * @param visits how many, by days
 */
record DaysTaken(int n, SortedMap<Long, Integer> visits) {

  /** From reception to shipping, of those that left. */
  static DaysTaken toShip(List<VisitFact> visits) {
    SortedMap<Long, Integer> days = new TreeMap<>();
    int n = 0;
    for (VisitFact v : visits) {
      if (v.shipped().isPresent()) {
        days.merge(v.shipped().get().toEpochDay() - v.received().toEpochDay(), 1, Integer::sum);
        n++;
      }
    }
    return new DaysTaken(n, days);
  }

  /** The days within which a share of them was done, by nearest rank; empty where none was. */
  Optional<Long> rank(double share) {
    int wanted = (int) Math.ceil(share * n);
    int seen = 0;
    for (Map.Entry<Long, Integer> some : visits.entrySet()) {
      seen += some.getValue();
      if (seen >= wanted) {
        return Optional.of(some.getKey());
      }
    }
    return Optional.empty();
  }
}
