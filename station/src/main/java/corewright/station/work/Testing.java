package corewright.station.work;

import corewright.bench.capture.OpenRuns;
import corewright.bench.inspect.Checklist;
import corewright.bench.port.Identities;
import corewright.bench.record.Dossier;
import corewright.bench.record.HandReading;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clearance;
import corewright.bench.run.Clock;
import corewright.bench.run.Confirmations;
import corewright.bench.run.GuardFinding;
import corewright.bench.run.Guards;
import corewright.bench.run.RunEngine;
import corewright.bench.run.RunListener;
import corewright.bench.run.RunPlan;
import corewright.bench.run.RunResult;
import corewright.bench.run.Stop;
import corewright.fixtures.describe.BenchDescription;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.RunBegun;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Tests a unit on a bench: the ledger knows of the run before anything is energised. */
public final class Testing {
  private final Catalogue catalogue;
  private final Ledger ledger;
  private final Folders folders;
  private final Clock clock;

  public Testing(Catalogue catalogue, Ledger ledger, Folders folders, Clock clock) {
    this.catalogue = catalogue;
    this.ledger = ledger;
    this.folders = folders;
    this.clock = clock;
  }

  /**
   * What shall be run.
   *
   * @param confirmed the cautions were shown and confirmed
   * @param secondPerson who else is there; demanded above 60 V DC, and proved by a password where
   *     the shop has accounts
   * @param byHand what was read elsewhere, by id of the step
   */
  public record Request(
      String tag,
      String profile,
      BenchDescription bench,
      String operator,
      boolean confirmed,
      Optional<SecondPerson> secondPerson,
      Map<String, HandReading> byHand) {

    /** A run in which nobody enters anything by hand. */
    public Request(
        String tag,
        String profile,
        BenchDescription bench,
        String operator,
        boolean confirmed,
        Optional<SecondPerson> secondPerson) {
      this(tag, profile, bench, operator, confirmed, secondPerson, Map.of());
    }
  }

  /**
   * What the guards find that need no open bench; the others are asked when it starts.
   *
   * @param emulated whether the bench is taken for one
   */
  public List<GuardFinding> beforehand(Request request, boolean emulated) {
    Profile profile = catalogue.profile(request.profile());
    return Guards.beforehand(plan(request, profile, emulated, "not begun"));
  }

  /** Runs the profile, measures, judges, and keeps all of it. */
  public RunRecord run(
      Request request, BenchInstruments instruments, RunIds ids, RunListener listener, Stop stop) {
    Profile profile = catalogue.profile(request.profile());
    mustFit(profile, ledger.dossier(request.tag()).core().family());
    String purpose = profile.purpose().name().toLowerCase(Locale.ROOT);
    int number = ledger.runs().nextNumber(request.tag(), purpose);
    Source source = source(instruments);
    boolean emulated = source == Source.EMULATED;
    RunPlan plan = plan(request, profile, emulated, ids.next(request.tag(), purpose, number));
    RunBegun begun =
        new RunBegun(
            plan.runId(),
            request.tag(),
            purpose,
            number,
            source,
            clock.wall(),
            request.operator(),
            request.bench().id(),
            request.bench().fixture().id(),
            profile.id(),
            folders.relative(folders.captures().resolve(plan.runId())),
            plan.family().needsSecondPerson()
                ? request.secondPerson().map(SecondPerson::name).orElse("")
                : "");
    ledger.runBegun(begun);
    RunResult result = new RunEngine(clock).run(plan, instruments, listener, stop);
    List<String> reference =
        ReferenceUnits.doubts(
            ledger, request.bench(), source, plan.family(), profile, request.tag());
    RunRecord record = outcome(plan, result).of(begun, plan.family(), profile, reference);
    ledger.runEnded(record);
    new ShiftCheck(catalogue, ledger, emulated).after(record, request.bench(), plan.family());
    OpenRuns.settled(result.run());
    return record;
  }

  /**
   * Before the record knows of it: such a run has no limits that it could be judged by.
   *
   * @param family of the unit
   * @throws Refused if the profile is for another
   */
  public void mustFit(Profile profile, String family) {
    if (!profile.family().equals(family)) {
      throw new Refused(
          "Profile "
              + profile.id()
              + " is for units of the family "
              + profile.family()
              + ", and this one is of "
              + family,
          "Choose one of "
              + String.join(", ", catalogue.profileIds(family))
              + "; or correct what the unit was received as.");
    }
  }

  private RunPlan plan(Request request, Profile profile, boolean emulated, String id) {
    Dossier dossier = ledger.dossier(request.tag());
    Family family = catalogue.family(dossier.core().family());
    return new RunPlan(
        id,
        request.tag(),
        family,
        profile,
        new BenchCondition(ledger, emulated).known(request.bench()),
        request.operator(),
        folders.captures(),
        confirmations(family, dossier, request, clearance(request, emulated, family)),
        request.byHand());
  }

  private RunOutcome outcome(RunPlan plan, RunResult result) {
    MeterSettings settings =
        Assessing.settings(
            plan.family(),
            plan.profile(),
            plan.bench().channels(),
            Optional.empty(),
            Optional.empty());
    return new RunOutcome(
        result.ended(),
        Optional.of(plan.bench().origin()),
        result.equipment(),
        result.file().map(folders::relative).orElse(""),
        result.sha256(),
        result.end(),
        result.troubles(),
        result
            .capture()
            .filter(c -> c.size() > 0)
            .map(c -> RunMeter.read(c, settings))
            .or(() -> before(plan, result))
            .map(result.beside()::with));
  }

  /** A unit that was refused has no holds, but what was read before them counts. */
  private static Optional<MeasuredRun> before(RunPlan plan, RunResult result) {
    return result.beside().readings().values().stream().anyMatch(r -> r.measurement().isPresent())
        ? Optional.of(Assessing.nothing(plan.profile()))
        : Optional.empty();
  }

  /** What the record says where it comes from; asks the instruments who they are. */
  static Source source(BenchInstruments instruments) {
    return instruments.all().stream().anyMatch(i -> Identities.isEmulated(i.identity()))
        ? Source.EMULATED
        : Source.BENCH;
  }

  private Clearance clearance(Request request, boolean emulated, Family family) {
    BenchDescription bench = request.bench();
    Authority authority = new Authority(ledger.accounts());
    BenchCondition condition = new BenchCondition(ledger, emulated);
    return new Clearance(
        Stream.concat(
                ledger.benches().standing(bench.id(), emulated).locked().stream(),
                condition.noiseAgainst(bench).stream())
            .toList(),
        bench.reference(request.tag()).isPresent(),
        ledger.lives().standing(request.tag()).life().notPowered().stream().toList(),
        authority.operatorAgainst(request.operator(), family),
        condition.contactsAgainst(bench),
        authority.secondAgainst(request.operator(), request.secondPerson(), family));
  }

  private static Confirmations confirmations(
      Family family, Dossier dossier, Request request, Clearance clearance) {
    Map<String, String> answers = Checklist.worst(family, dossier.answers());
    List<String> blocking = Deciding.blocking(family, answers);
    return new Confirmations(
        request.confirmed(),
        request.secondPerson().map(SecondPerson::name),
        dossier.identification().map(Identification::band),
        blocking,
        clearance);
  }
}
