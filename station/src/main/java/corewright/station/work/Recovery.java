package corewright.station.work;

import corewright.bench.capture.OpenRun;
import corewright.bench.capture.OpenRuns;
import corewright.bench.capture.Recovered;
import corewright.bench.record.Core;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.run.SafeState;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.RunBegun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a program that died has left behind on a bench. The safe state comes first, before anything
 * is asked or written; then each run that never ended gets its end in the record.
 */
public final class Recovery {
  private final Catalogue catalogue;
  private final Ledger ledger;
  private final Folders folders;
  private final Clock clock;

  public Recovery(Catalogue catalogue, Ledger ledger, Folders folders, Clock clock) {
    this.catalogue = catalogue;
    this.ledger = ledger;
    this.folders = folders;
    this.clock = clock;
  }

  /**
   * Takes the bench to its safe state and closes the runs that died on it.
   *
   * @param bench id of the bench
   * @return the runs that were closed; often empty
   */
  public List<RunRecord> settle(BenchInstruments instruments, String bench) {
    List<OpenRun> open = OpenRuns.in(folders.captures());
    List<RunBegun> unfinished =
        ledger.runs().unfinished().stream().filter(b -> b.bench().equals(bench)).toList();
    if (unfinished.isEmpty()) {
      return List.of();
    }
    List<String> troubles = SafeState.take(instruments);
    List<RunRecord> closed = new ArrayList<>();
    for (RunBegun begun : unfinished) {
      Optional<OpenRun> left = open.stream().filter(o -> o.runId().equals(begun.id())).findFirst();
      Optional<Recovered> found = left.map(OpenRuns::recover);
      RunRecord record = record(begun, found, troubles);
      ledger.runEnded(record);
      left.ifPresent(OpenRuns::settled);
      closed.add(record);
    }
    return closed;
  }

  private RunRecord record(RunBegun begun, Optional<Recovered> found, List<String> troubles) {
    Core core = ledger.dossier(begun.tag()).core();
    Family family = catalogue.family(core.family());
    Profile profile = catalogue.profile(begun.profileId());
    RunEnd end = found.map(Recovered::end).orElseGet(Recovery::nothingLeft);
    return new RunOutcome(
            clock.wall(),
            Optional.empty(),
            List.of(),
            found.flatMap(Recovered::file).map(folders::relative).orElse(""),
            found.map(Recovered::sha256).orElse(""),
            end,
            troubles,
            Optional.empty())
        .of(begun, family, profile);
  }

  private static RunEnd nothingLeft() {
    return new RunEnd(
        RunEnd.Kind.ABANDONED,
        "",
        0,
        "The program died before anything was sampled.",
        "Discharge the unit, then run the profile again.");
  }
}
