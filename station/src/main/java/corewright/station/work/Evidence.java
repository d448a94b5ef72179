package corewright.station.work;

import corewright.bench.diagnose.Diagnostician;
import corewright.bench.diagnose.Letter;
import corewright.bench.diagnose.Priors;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Dossier;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import corewright.profiles.KeptTexts;
import corewright.profiles.Profile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the runs of a visit come to: the last valid one of the latest purpose stands, for a void or
 * unfinished repeat takes nothing back. Runs before a rebuild say nothing of the unit after it.
 */
final class Evidence {
  private static final Set<Verdict> VALID =
      Set.of(Verdict.PASS, Verdict.MARGINAL, Verdict.FAIL, Verdict.UNSAFE);

  /** Marginal runs on another bench that make a first one certain, of the last five there. */
  private static final int AGREEING = 4;

  private static final int REPEATS = 5;

  private final List<RunRecord> runs;

  Evidence(Dossier dossier) {
    String purpose =
        dossier.runs().isEmpty() ? "" : dossier.runs().get(dossier.runs().size() - 1).purpose();
    runs = dossier.runs().stream().filter(r -> r.purpose().equals(purpose)).toList();
  }

  /** The run that the decision stands on; empty without any. */
  Optional<RunRecord> standing() {
    return valid().stream().reduce((a, b) -> b).or(() -> runs.stream().reduce((a, b) -> b));
  }

  /** The last run, whatever came of it: what is true of the charge is true of it. */
  Optional<RunRecord> last() {
    return runs.stream().reduce((a, b) -> b);
  }

  Optional<Judgement> judgement() {
    return standing().map(RunRecord::judgement);
  }

  /** Valid runs that contradict one another: it is intermittent until a long soak says more. */
  boolean contradicts() {
    return valid().stream().map(r -> r.judgement().verdict()).distinct().count() > 1;
  }

  /** Marginal on one bench, and in at least four of the last five valid runs on another. */
  boolean marginalAgain() {
    Optional<RunRecord> first =
        valid().stream().filter(r -> verdict(r) == Verdict.MARGINAL).findFirst();
    List<RunRecord> elsewhere =
        valid().stream()
            .filter(r -> first.isPresent() && !r.bench().equals(first.get().bench()))
            .toList();
    List<RunRecord> lastFive =
        elsewhere.subList(Math.max(0, elsewhere.size() - REPEATS), elsewhere.size());
    return lastFive.size() == REPEATS
        && lastFive.stream().filter(r -> verdict(r) == Verdict.MARGINAL).count() >= AGREEING;
  }

  /** Which groups the standing run points at. */
  Optional<Diagnosis> diagnosis(Priors priors) {
    return standing()
        .map(
            run -> {
              Family family = KeptTexts.family(run.family());
              Profile profile = KeptTexts.profile(run.profile(), family);
              return Diagnostician.diagnose(
                  measured(run), family, profile, run.judgement(), priors);
            });
  }

  /** What the customer can be told of the standing run. */
  String finding(Optional<Diagnosis> diagnosis) {
    return standing()
        .flatMap(run -> diagnosis.map(d -> Letter.finding(measured(run), run.judgement(), d)))
        .orElse("");
  }

  private List<RunRecord> valid() {
    return runs.stream().filter(r -> VALID.contains(verdict(r))).toList();
  }

  private static Verdict verdict(RunRecord run) {
    return run.judgement().verdict().orElse(Verdict.INCOMPLETE);
  }

  private static MeasuredRun measured(RunRecord run) {
    return run.measured()
        .orElseGet(
            () -> new MeasuredRun(0, 0, "nothing was sampled", List.of(), Map.of(), List.of()));
  }
}
