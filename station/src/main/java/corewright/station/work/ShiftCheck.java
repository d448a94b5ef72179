package corewright.station.work;

import corewright.bench.diagnose.Priors;
import corewright.bench.judge.BenchChart;
import corewright.bench.judge.BenchEvent;
import corewright.bench.judge.BenchEvent.What;
import corewright.bench.judge.BenchStanding;
import corewright.bench.judge.BenchStudy;
import corewright.bench.judge.ReferenceJudge;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.ReferenceUnit;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.ledger.Benches;
import corewright.reports.ledger.Benches.Check;
import corewright.reports.ledger.Benches.Suspect;
import corewright.reports.ledger.Ledger;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Proves a bench with its reference units, shift by shift. Whoever runs one, from wherever, has it
 * judged; a bench that does not pass is locked. The charts are made of the runs in the record.
 */
public final class ShiftCheck {
  private final Catalogue catalogue;
  private final Ledger ledger;
  private final boolean emulated;

  /**
   * @param emulated whether the bench is: what one shows says nothing of a real one of the same id
   */
  ShiftCheck(Catalogue catalogue, Ledger ledger, boolean emulated) {
    this.catalogue = catalogue;
    this.ledger = ledger;
    this.emulated = emulated;
  }

  /**
   * One reference unit and how it stands.
   *
   * @param profile what it is tested with
   * @param last its last check on this bench; empty before the first
   * @param due whether it is due today
   */
  public record Unit(ReferenceUnit unit, String profile, Optional<BenchEvent> last, boolean due) {
    /** Whether its last check was good. */
    public boolean good() {
      return last.filter(e -> e.what() == What.CHECKED_GOOD).isPresent();
    }
  }

  /** A bench: its units, why it is locked, which results are in doubt. */
  public record State(List<Unit> units, List<String> locked, List<Suspect> suspects) {}

  /** How a bench stands on a day. */
  public State state(BenchDescription bench, LocalDate today, ZoneId zone) {
    Benches benches = ledger.benches();
    List<BenchEvent> events = benches.events(bench.id(), emulated);
    return new State(
        bench.referenceUnits().stream().map(u -> unit(u, events, today, zone)).toList(),
        BenchStanding.of(events).locked(),
        benches.suspects(bench.id(), emulated));
  }

  private Unit unit(ReferenceUnit unit, List<BenchEvent> events, LocalDate today, ZoneId zone) {
    Optional<BenchEvent> last =
        events.stream()
            .filter(e -> e.unit().equalsIgnoreCase(unit.tag()))
            .filter(e -> e.what() == What.CHECKED_GOOD || e.what() == What.CHECKED_BAD)
            .reduce((a, b) -> b);
    boolean due =
        last.filter(e -> e.what() == What.CHECKED_GOOD)
            .map(e -> WallClock.day(e.when(), zone))
            .filter(day -> day.plusDays(unit.kind().every_days()).isAfter(today))
            .isEmpty();
    return new Unit(unit, profile(unit), last, due);
  }

  /** What a reference unit is tested with. */
  public String profile(ReferenceUnit unit) {
    if (!unit.profile().isEmpty()) {
      return unit.profile();
    }
    String family = ledger.dossier(unit.tag()).core().family();
    return catalogue.profileIds(family).stream()
        .filter(id -> catalogue.profile(id).purpose() == Profile.Purpose.ARRIVAL)
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "Family " + family + " has no arrival profile to prove a bench with",
                    "Name a profile beside the unit " + unit.tag() + " in the bench's file."));
  }

  /**
   * Judges the run that a unit has just made, where it is a reference unit of the bench and this is
   * its profile. A run that a lost link or a person ended says nothing, and is no check.
   *
   * @return what was kept; empty if there was nothing to judge
   */
  Optional<Check> after(RunRecord run, BenchDescription bench, Family family) {
    return bench
        .reference(run.tag())
        .filter(unit -> profile(unit).equals(run.profileId()))
        .filter(unit -> saysSomething(run, unit.kind()))
        .map(
            unit -> {
              Check judged =
                  new Check(
                      run.tag(), unit.kind().words(), run.id(), against(unit, run, bench, family));
              ledger.benches().checked(bench.id(), judged, run.operator());
              return judged;
            });
  }

  /**
   * Whether a run of a reference unit speaks of its bench: not where a lost link, a trip of the
   * bench or a person ended it. What did not come to a hold speaks where the unit was not even let
   * past the power-up and is known to get that far.
   */
  static boolean saysSomething(RunRecord run, ReferenceUnit.Kind kind) {
    Verdict verdict = run.judgement().verdict().orElse(Verdict.INCOMPLETE);
    boolean held = run.measured().filter(m -> !m.holds().isEmpty()).isPresent();
    return verdict != Verdict.INCOMPLETE
        && run.end().kind() != RunEnd.Kind.BENCH_FAULT
        && (held || (verdict == Verdict.UNSAFE && kind != ReferenceUnit.Kind.BAD));
  }

  private List<String> against(
      ReferenceUnit unit, RunRecord run, BenchDescription bench, Family family) {
    List<RunRecord> proven = proven(unit.tag(), bench, run);
    return ReferenceJudge.against(unit, proven, run, named(run), family);
  }

  /** Why the result of a run is in doubt; empty if it is not. */
  public Optional<String> suspect(RunRecord run) {
    return ledger.benches().suspect(run.bench(), run.tag(), run.id());
  }

  /** Runs of a visit whose result is in doubt, by id, and why. */
  public Map<String, String> suspect(Dossier dossier) {
    Map<String, String> found = new LinkedHashMap<>();
    for (RunRecord run : dossier.runs()) {
      suspect(run).ifPresent(why -> found.put(run.id(), why));
    }
    return found;
  }

  /**
   * How much of what the bench reads is the measuring, by profile: from the runs of its reference
   * units since it was calibrated last.
   */
  public List<BenchStudy> studies(BenchDescription bench) {
    Map<String, Map<String, List<RunRecord>>> runs = new TreeMap<>();
    for (ReferenceUnit unit : bench.referenceUnits()) {
      runs.computeIfAbsent(profile(unit), p -> new TreeMap<>()).put(unit.tag(), runs(unit, bench));
    }
    return runs.entrySet().stream().map(e -> BenchStudy.of(e.getKey(), e.getValue())).toList();
  }

  /** The charts of a reference unit on a bench, its runs since the bench was calibrated last. */
  public List<BenchChart> charts(ReferenceUnit unit, BenchDescription bench) {
    return BenchChart.of(runs(unit, bench));
  }

  private List<RunRecord> runs(ReferenceUnit unit, BenchDescription bench) {
    List<RunRecord> runs = new ArrayList<>();
    checks(bench).stream()
        .filter(e -> e.unit().equalsIgnoreCase(unit.tag()))
        .map(BenchEvent::run)
        .forEach(
            id ->
                ledger.dossier(unit.tag()).runs().stream()
                    .filter(r -> r.id().equals(id))
                    .forEach(runs::add));
    return runs;
  }

  private List<RunRecord> proven(String tag, BenchDescription bench, RunRecord now) {
    Set<String> good =
        checks(bench).stream()
            .filter(e -> e.what() == What.CHECKED_GOOD)
            .map(BenchEvent::run)
            .collect(Collectors.toSet());
    return ledger.dossier(tag).runs().stream()
        .filter(r -> good.contains(r.id()) && !r.id().equals(now.id()))
        .filter(r -> r.profileId().equals(now.profileId()))
        .filter(r -> r.profileRevision() == now.profileRevision())
        .toList();
  }

  /** What a bench reads is another thing after a calibration. */
  private List<BenchEvent> checks(BenchDescription bench) {
    List<BenchEvent> events = ledger.benches().events(bench.id(), emulated);
    int from = 0;
    for (int i = 0; i < events.size(); i++) {
      What what = events.get(i).what();
      from = what == What.CALIBRATED || what == What.FOUND_OUT ? i + 1 : from;
    }
    return events.subList(from, events.size()).stream().filter(e -> !e.run().isEmpty()).toList();
  }

  private Optional<String> named(RunRecord run) {
    Dossier told = ledger.dossier(run.tag());
    Dossier one =
        new Dossier(
            told.core(),
            told.visit(),
            told.answers(),
            told.identification(),
            List.of(run),
            told.decision(),
            told.rebuild());
    return new Evidence(one)
        .diagnosis(Priors.ofTrade())
        .flatMap(Diagnosis::named)
        .map(Diagnosis.Candidate::group);
  }
}
