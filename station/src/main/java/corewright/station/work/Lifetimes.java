package corewright.station.work;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.reports.ledger.Attached;
import corewright.reports.ledger.Found;
import corewright.reports.ledger.Happened;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Everything about one unit, from its first reception on. */
public final class Lifetimes {
  private static final Set<Verdict> JUDGED =
      Set.of(Verdict.PASS, Verdict.MARGINAL, Verdict.FAIL, Verdict.UNSAFE);

  private final Ledger ledger;

  Lifetimes(Ledger ledger) {
    this.ledger = ledger;
  }

  /**
   * A unit's life.
   *
   * @param now its latest visit
   * @param received the last judged test before it left, or the last at all while it never left
   * @param left the last judged test before it left
   * @param returned the last judged test since it came back
   * @param siblings who shares a lot, technician, or bench and week, by what is shared
   */
  public record Lifetime(
      Standing standing,
      Dossier now,
      List<Happened> history,
      Optional<RunRecord> received,
      Optional<RunRecord> left,
      Optional<RunRecord> returned,
      List<Attached> files,
      Map<String, List<Found>> siblings) {

    /** The run that the unit is known by now. */
    public Optional<RunRecord> latest() {
      return returned.or(() -> left).or(() -> received);
    }
  }

  /** Tells the life of one unit. */
  public Lifetime of(String tag) {
    Standing standing = ledger.lives().standing(tag);
    List<RunRecord> runs = new ArrayList<>();
    Dossier now = ledger.dossier(tag);
    for (int visit = 1; visit < now.visit(); visit++) {
      runs.addAll(ledger.dossier(tag, visit).runs());
    }
    runs.addAll(now.runs());
    runs.removeIf(r -> r.judgement().verdict().filter(JUDGED::contains).isEmpty());
    Optional<RunRecord> left = last(runs, r -> r.purpose().equals("ship"));
    int leftAt = left.map(runs::indexOf).orElse(runs.size());
    List<RunRecord> before = runs.subList(0, leftAt);
    List<RunRecord> after = runs.subList(Math.min(runs.size(), leftAt + 1), runs.size());
    return new Lifetime(
        standing,
        now,
        ledger.lives().history(tag),
        last(before, r -> r.purpose().equals("arrival")).or(() -> last(before, r -> true)),
        left,
        last(after, r -> !r.purpose().equals("ship")),
        ledger.lives().attached(tag),
        ledger.siblings(tag));
  }

  private static Optional<RunRecord> last(List<RunRecord> runs, Predicate<RunRecord> which) {
    return runs.stream().filter(which).reduce((a, b) -> b);
  }
}
