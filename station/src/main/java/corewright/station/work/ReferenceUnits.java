package corewright.station.work;

import corewright.bench.judge.BenchEvent.What;
import corewright.bench.judge.ReferenceCheck;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.ReferenceUnit;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.ledger.Ledger;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the known good units of a bench showed on it last, against their first pass there: while it
 * differs, the bench is in doubt and no run on it says anything of a unit.
 */
final class ReferenceUnits {
  private static final Set<What> ANEW =
      EnumSet.of(What.UNLOCKED, What.CLEARED, What.CALIBRATED, What.FOUND_OUT);

  private ReferenceUnits() {}

  /**
   * What speaks against the bench, each a sentence; often empty.
   *
   * @param source of the run: an emulated bench and a real one say nothing of each other
   * @param tag of the unit under test: it never speaks for itself
   */
  static List<String> doubts(
      Ledger ledger,
      BenchDescription bench,
      Source source,
      Family family,
      Profile profile,
      String tag) {
    return bench.referenceUnits().stream()
        .filter(known -> known.kind() == ReferenceUnit.Kind.GOOD)
        .map(ReferenceUnit::tag)
        .filter(known -> !known.equals(tag) && ledger.knows(known))
        .flatMap(
            known -> doubts(since(ledger, bench, source, known), bench, family, profile).stream())
        .toList();
  }

  /** A bench that was calibrated, or that its owner unlocked, is measured by what follows. */
  private static List<RunRecord> since(
      Ledger ledger, BenchDescription bench, Source source, String known) {
    Instant anew =
        ledger.benches().events(bench.id(), source == Source.EMULATED).stream()
            .filter(e -> ANEW.contains(e.what()))
            .map(e -> Instant.parse(e.when()))
            .reduce(Instant.MIN, (a, b) -> b);
    return ledger.dossier(known).runs().stream()
        .filter(r -> r.source() == source && r.ended().isAfter(anew))
        .toList();
  }

  static List<String> doubts(
      List<RunRecord> runs, BenchDescription bench, Family family, Profile profile) {
    List<RunRecord> here =
        runs.stream()
            .filter(r -> r.bench().equals(bench.id()) && r.profileId().equals(profile.id()))
            .filter(r -> r.profileRevision() == profile.revision())
            .filter(r -> ShiftCheck.saysSomething(r, ReferenceUnit.Kind.GOOD))
            .toList();
    Optional<RunRecord> proved = here.stream().filter(r -> verdict(r) == Verdict.PASS).findFirst();
    return proved
        .map(r -> ReferenceCheck.doubts(measured(r), measured(here.get(here.size() - 1)), family))
        .orElse(List.of());
  }

  private static Verdict verdict(RunRecord run) {
    return run.judgement().verdict().orElse(Verdict.INCOMPLETE);
  }

  private static MeasuredRun measured(RunRecord run) {
    return run.measured()
        .orElseGet(() -> new MeasuredRun(0, 0, "", List.of(), Map.of(), List.of()));
  }
}
