package corewright.station.work;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.reports.ledger.Attached;
import corewright.reports.ledger.Happened;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Lives;
import corewright.reports.ledger.Sharing;
import corewright.reports.ledger.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Everything about one unit, from its first reception on. */
public final class Lifetimes {
  private static final Set<Verdict> JUDGED =
      Set.of(Verdict.PASS, Verdict.MARGINAL, Verdict.FAIL, Verdict.UNSAFE);

  /** Of more the first are told, and how many they are. */
  private static final int MOST_SIBLINGS = 30;

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
   * @param siblings how many share a lot, technician, or bench and week
   */
  public record Lifetime(
      Standing standing,
      Dossier now,
      List<Happened> history,
      Optional<RunRecord> received,
      Optional<RunRecord> left,
      Optional<RunRecord> returned,
      List<Attached> files,
      List<Sharing> siblings) {

    /** The run that the unit is known by now. */
    public Optional<RunRecord> latest() {
      return returned.or(() -> left).or(() -> received);
    }
  }

  /** Tells the life of one unit. */
  public Lifetime of(String tag) {
    Lives.Whole whole = ledger.lives().whole(tag);
    Dossier now = whole.visits().get(whole.visits().size() - 1);
    List<RunRecord> runs = new ArrayList<>();
    whole.visits().forEach(visit -> runs.addAll(visit.runs()));
    runs.removeIf(r -> r.judgement().verdict().filter(JUDGED::contains).isEmpty());
    Optional<RunRecord> left = last(runs, r -> r.purpose().equals("ship"));
    int leftAt = left.map(runs::indexOf).orElse(runs.size());
    List<RunRecord> before = runs.subList(0, leftAt);
    List<RunRecord> after = runs.subList(Math.min(runs.size(), leftAt + 1), runs.size());
    return new Lifetime(
        whole.standing(),
        now,
        whole.history(),
        last(before, r -> r.purpose().equals("arrival")).or(() -> last(before, r -> true)),
        left,
        last(after, r -> !r.purpose().equals("ship")),
        whole.files(),
        ledger.sharing(tag, MOST_SIBLINGS));
  }

  private static Optional<RunRecord> last(List<RunRecord> runs, Predicate<RunRecord> which) {
    return runs.stream().filter(which).reduce((a, b) -> b);
  }
}
