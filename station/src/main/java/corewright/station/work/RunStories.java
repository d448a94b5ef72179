package corewright.station.work;

import corewright.bench.diagnose.Priors;
import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Dossier;
import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.reports.chart.Headlines;
import corewright.reports.ledger.Amendment;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.RunFact;
import corewright.reports.ledger.RunLists.Beside;
import java.util.List;
import java.util.Optional;

/** One run with what it is read beside. Nothing is judged anew: an old verdict stays. */
public final class RunStories {
  /** More ticks than this on one line cannot be told apart. */
  private static final int SIBLINGS = 60;

  private final Ledger ledger;

  RunStories(Ledger ledger) {
    this.ledger = ledger;
  }

  /**
   * One run.
   *
   * @param dossier the visit that the run belongs to
   * @param diagnosis what it points at: as it was decided on, where it was
   * @param finding what the customer can be told of it, sentences; may be empty
   * @param ofUnit every run of the unit, in the order they were begun
   * @param headline the finding that the one sentence is about
   * @param siblings what others of the same build read there, under the same profile and bench
   * @param amendments what was added to this run since
   */
  public record Story(
      Dossier dossier,
      RunRecord run,
      Optional<Diagnosis> diagnosis,
      String finding,
      List<RunFact> ofUnit,
      Optional<Finding> headline,
      List<Beside> siblings,
      List<Amendment> amendments) {}

  /**
   * Tells of one run.
   *
   * @throws Refused if no such run was closed
   */
  public Story of(String id) {
    RunFact fact = ledger.runLists().find(id).orElseThrow(() -> unknown(id));
    Dossier dossier = ledger.dossier(fact.tag(), fact.visit());
    RunRecord run =
        dossier.runs().stream()
            .filter(r -> r.id().equals(id))
            .findFirst()
            .orElseThrow(() -> unknown(id));
    Optional<Decision> on =
        dossier.decision().filter(d -> d.reasons().containsAll(run.judgement().reasons()));
    Evidence alone = new Evidence(alone(dossier, run));
    Optional<Diagnosis> diagnosis =
        on.flatMap(Decision::diagnosis).or(() -> alone.diagnosis(Priors.ofTrade()));
    String told = on.map(Decision::finding).orElse("");
    Optional<Finding> headline = Headlines.worst(run);
    return new Story(
        dossier,
        run,
        diagnosis,
        told.isEmpty() ? alone.finding(diagnosis) : told,
        ledger.runLists().of(fact.tag()),
        headline,
        headline
            .map(h -> ledger.runLists().beside(fact, h.limit().id(), SIBLINGS))
            .orElse(List.of()),
        ledger.runs().amendments(fact.tag()).stream().filter(a -> a.run().equals(id)).toList());
  }

  private static Dossier alone(Dossier of, RunRecord run) {
    return new Dossier(
        of.core(),
        of.visit(),
        of.answers(),
        of.identification(),
        List.of(run),
        of.decision(),
        of.rebuild());
  }

  private static Refused unknown(String id) {
    return new Refused(
        "No run " + (id.length() > 80 ? "of that name" : id) + " was closed",
        "Open the unit by its tag: its page lists every run.");
  }
}
