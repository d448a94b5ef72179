package corewright.station.cli;

import corewright.bench.record.RunRecord;
import corewright.station.work.ShiftCheck;
import java.util.Optional;

/** What the run of a reference unit said of its bench. */
final class ProvedWords {
  private ProvedWords() {}

  /** One sentence or two; empty where the unit is none of the bench's. */
  static Optional<String> of(ShiftCheck.State bench, RunRecord run) {
    return bench.units().stream()
        .filter(u -> u.unit().tag().equalsIgnoreCase(run.tag()))
        .findFirst()
        .map(u -> "Reference unit, " + u.unit().kind().words() + ": " + found(bench, u, run));
  }

  private static String found(ShiftCheck.State bench, ShiftCheck.Unit unit, RunRecord run) {
    if (unit.last().filter(e -> e.run().equals(run.id())).isEmpty()) {
      return "this run is no check of the bench"
          + (run.profileId().equals(unit.profile())
              ? ", for it came to no hold, or bench or person ended it."
              : "; that is " + unit.profile() + ".");
    }
    return bench.locked().isEmpty()
        ? "in order, bench " + run.bench() + " is not locked."
        : "bench " + run.bench() + " is LOCKED. " + String.join(" ", bench.locked());
  }
}
