package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Life;
import corewright.bench.life.Stage;
import corewright.bench.record.Identification.Band;
import corewright.bench.record.RunEnd;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.BenchDescription.FixtureDescription;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.profiles.SupplyFeed;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each guard refuses its own case, nothing is energised then, and none is without a case. */
class GuardsTest {
  @TempDir Path folder;

  /** Changes to a run that would be allowed; the one guard that must refuse it. */
  record Case(String guard, String saw, Change change) {
    @Override
    public String toString() {
      return guard + ": " + saw;
    }
  }

  interface Change {
    RunPlan apply(RunPlan plan, FakeBench bench);
  }

  static Stream<Case> cases() {
    return Stream.of(
        new Case(
            "cautions-confirmed",
            "were not confirmed",
            (p, b) ->
                with(p, new Confirmations(false, Optional.empty(), Optional.empty(), List.of()))),
        new Case(
            "identity-known",
            "not certain",
            (p, b) ->
                with(
                    p,
                    new Confirmations(
                        true, Optional.empty(), Optional.of(Band.UNCERTAIN), List.of()))),
        new Case(
            "checklist-clear",
            "moisture: wet",
            (p, b) ->
                with(
                    p,
                    new Confirmations(
                        true, Optional.empty(), Optional.empty(), List.of("moisture: wet")))),
        new Case(
            "unit-may-be-powered",
            "It is quarantine: nothing is powered on the red shelf",
            (p, b) ->
                cleared(
                    p,
                    new Clearance(
                        List.of(),
                        false,
                        new Life(Stage.QUARANTINE, Optional.empty(), true)
                            .notPowered().stream().toList(),
                        List.of()))),
        new Case(
            "bench-in-control",
            "Unit G1 came to FAIL.",
            (p, b) ->
                cleared(
                    p,
                    new Clearance(List.of("Unit G1 came to FAIL."), false, List.of(), List.of()))),
        new Case(
            "contacts-good",
            "The contacts are worn.",
            (p, b) ->
                cleared(
                    p,
                    new Clearance(
                        List.of(),
                        true,
                        List.of(),
                        List.of(),
                        List.of("The contacts are worn."),
                        List.of()))),
        new Case(
            "operator-authorised",
            "Ada may not.",
            (p, b) ->
                cleared(p, new Clearance(List.of(), false, List.of(), List.of("Ada may not.")))),
        new Case(
            "second-person", "nobody but the operator", (p, b) -> pv65(p, b, Optional.empty())),
        new Case(
            "second-person", "nobody but the operator", (p, b) -> pv65(p, b, Optional.of(" ada "))),
        new Case(
            "second-person",
            "Grace has no account.",
            (p, b) ->
                cleared(
                    pv65(p, b, Optional.of("Grace")),
                    new Clearance(
                        List.of(),
                        false,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of("Grace has no account.")))),
        new Case(
            "profile-fits-family",
            "one for ie110, the unit is a sd48",
            (p, b) -> with(p, Plans.profile("ie110", 1000, Plans.whole().steps()))),
        new Case(
            "order-of-steps",
            "FIRST_POWER",
            (p, b) -> with(p, Plans.profile(Plans.FIRST, Plans.DEAD, Plans.REST, Plans.AWAY))),
        new Case(
            "order-of-steps",
            "HOLD",
            (p, b) -> with(p, Plans.profile(Plans.DEAD, Plans.REST, Plans.FULL, Plans.AWAY))),
        new Case(
            "order-of-steps",
            "HOLD].",
            (p, b) -> with(p, Plans.profile(Plans.DEAD, Plans.FIRST, Plans.REST, Plans.FULL))),
        new Case(
            "levels-allowed",
            "up to 16.50 V",
            (p, b) -> with(p, levels(Plans.hold("high", 16.5, 1, 1)))),
        new Case(
            "levels-allowed",
            "2.50 A",
            (p, b) -> with(p, levels(Plans.hold("much", 12.5, 2.5, 1)))),
        new Case(
            "trip-margin",
            "off within 600 ms of a fault; the fastest limit that it must hold by itself allows 500"
                + " ms",
            (p, b) -> with(p, bench(p, p.bench().fixture(), 0.6, 1e6))),
        new Case(
            "interlock-whole",
            "chain is open",
            (p, b) -> {
              b.unit.chainWhole = false;
              return p;
            }),
        new Case(
            "interlock-whole",
            "could not be checked: the reader is dead",
            (p, b) -> {
              b.before =
                  command -> {
                    if (command.equals("interlock whole?")) {
                      throw new IllegalStateException("the reader is dead");
                    }
                  };
              return p;
            }),
        new Case(
            "fixture-fits-family",
            "EF-OTHER is plugged in",
            (p, b) -> {
              b.fixture = "EF-OTHER";
              return p;
            }),
        new Case(
            "fixture-fits-family",
            "for ie110; the unit is a sd48",
            (p, b) -> fixture(p, new FixtureDescription("EF-SD48", List.of("ie110"), 470, 60))),
        new Case(
            "fixture-rated",
            "may see 50 V; the run is cut off at 56 V",
            (p, b) -> fixture(p, new FixtureDescription("EF-SD48", List.of("sd48"), 470, 50))),
        new Case(
            "discharge-path",
            "is 4700 Ω; the family asks for 470 Ω",
            (p, b) -> fixture(p, new FixtureDescription("EF-SD48", List.of("sd48"), 4700, 60))),
        new Case(
            "channels-sampled",
            "Channel starter is not sampled",
            (p, b) -> with(p, feeds(new SupplyFeed("starter", Plans.SD48.zones())))),
        new Case(
            "sample-rate",
            "asks for 1000 samples a second; the digitizer takes at most 10.",
            (p, b) -> {
              b.most_Hz = 10;
              return p;
            }),
        new Case(
            "line-rate",
            "bytes a second, the digitizer's line carries 11520",
            (p, b) -> with(p, bench(p, p.bench().fixture(), 0.05, 11_520))),
        new Case(
            "temperature-fits-profile",
            "The unit is at 12.3 ± 1.5 °C; the profile asks for 23 ± 5 °C.",
            (p, b) -> {
              b.unit.case_C = 12.3;
              return p;
            }),
        new Case(
            "temperature-fits-profile",
            "The unit's temperature is not measured; the profile asks for −20 ± 5 °C.",
            (p, b) -> {
              b.hasThermometer = false;
              return with(p, Plans.profile("sd48", 1000, -20, Plans.whole().steps()));
            }));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void itsCaseIsRefusedByThisGuardAloneAndNothingIsEnergised(Case c) {
    FakeBench bench = new FakeBench();
    RunPlan plan = c.change().apply(Plans.plan(folder), bench);
    RunResult result =
        new RunEngine(bench.clock).run(plan, bench.instruments(), RunListener.NONE, new Stop());
    List<GuardFinding> refused = result.guards().stream().filter(g -> !g.passed()).toList();
    assertEquals(List.of(c.guard()), refused.stream().map(GuardFinding::guard).toList());
    assertTrue(refused.get(0).saw().contains(c.saw()), refused.get(0).saw());
    assertFalse(refused.get(0).remedy().isEmpty());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertEquals(refused.get(0).saw(), result.end().saw());
    assertFalse(bench.told.contains("source output true"));
    assertFalse(bench.told.contains("digitizer relay true"));
    assertTrue(result.file().isEmpty());
  }

  @Test
  void noGuardIsWithoutItsCase() {
    TreeSet<String> ids =
        Stream.concat(PlanGuards.ALL.stream().map(Guard.OnPaper::guard), BenchGuards.ALL.stream())
            .map(Guard::id)
            .collect(Collectors.toCollection(TreeSet::new));
    ids.remove("discharge-connected"); // the safe state before the guards refuses it first
    assertEquals(ids, cases().map(Case::guard).collect(Collectors.toCollection(TreeSet::new)));
  }

  @Test
  void aDischargeResistorThatIsNotConnectedIsRefused() {
    FakeBench bench = new FakeBench();
    GuardFinding finding =
        BenchGuards.ALL.stream()
            .filter(g -> g.id().equals("discharge-connected"))
            .findFirst()
            .orElseThrow()
            .ask(Plans.plan(folder), liftedDischarge(bench));
    assertFalse(finding.passed());
    assertEquals("The discharge resistor is not connected.", finding.saw());
  }

  /** A channel to 33 A, pulses to 35 A: too small only where the load really pulses. */
  @Test
  void aStepThatIsLeftOpenNeedsNoChannelThatSeesItsPeak() {
    Step.Detail pulses =
        new Step.Detail(
            Optional.of(100e3),
            0,
            0,
            List.of(),
            1,
            Optional.empty(),
            false,
            Optional.of(new Step.Pulses(35, 0.0002, 100)));
    Step step = new Step("pulses", Step.Kind.PULSES, "Pulses", 12.5, 20, 1, 0.1, false, pulses);
    RunPlan plan = Plans.plan(folder, Plans.profile(Plans.DEAD, Plans.FIRST, step, Plans.AWAY));
    FakeBench bench = new FakeBench();
    assertEquals(
        Optional.of("Channel load reaches 32.8 A, and must see 35.0 A."), refused(plan, bench));
    bench.pulses = false;
    assertEquals(Optional.empty(), refused(plan, bench));
  }

  private static Optional<String> refused(RunPlan plan, FakeBench bench) {
    return Guards.ask(plan, bench.instruments()).stream()
        .filter(g -> !g.passed())
        .map(GuardFinding::saw)
        .findFirst();
  }

  private static BenchInstruments liftedDischarge(FakeBench bench) {
    bench.unit.discharging = false;
    return bench.instruments();
  }

  @Test
  void aboveSixtyVoltsASecondPersonIsEnough() {
    FakeBench bench = new FakeBench();
    RunPlan plan = pv65(Plans.plan(folder), bench, Optional.of("Grace"));
    assertTrue(
        Guards.ask(plan, bench.instruments()).stream().allMatch(GuardFinding::passed),
        Guards.ask(plan, bench.instruments()).toString());
  }

  private static Profile levels(corewright.profiles.Step step) {
    return Plans.profile(Plans.DEAD, Plans.FIRST, step, Plans.AWAY);
  }

  private static Profile feeds(SupplyFeed feed) {
    Profile p = Plans.whole();
    return new Profile(
        p.id(),
        1,
        p.family(),
        p.title(),
        p.purpose(),
        1000,
        p.settle_s(),
        p.guard_s(),
        List.of(feed),
        false,
        1,
        p.steps(),
        p.limits(),
        23,
        5,
        p.origin());
  }

  private static RunPlan pv65(RunPlan p, FakeBench bench, Optional<String> second) {
    Family pv65 = Catalogue.ofHome().family("pv65");
    bench.fixture = "EF-PV65";
    FixtureDescription fixture =
        new FixtureDescription("EF-PV65", List.of("pv65"), pv65.discharge().resistor_ohm(), 90);
    Profile profile =
        Plans.profile(
            "pv65",
            1000,
            List.of(Plans.DEAD, Plans.FIRST, Plans.hold("half", 12.5, 0.3, 1), Plans.AWAY));
    return new RunPlan(
        p.runId(),
        p.tag(),
        pv65,
        profile,
        bench(p, fixture, 0.05, 1e6),
        p.operator(),
        p.folder(),
        new Confirmations(true, second, Optional.empty(), List.of()));
  }

  private static RunPlan cleared(RunPlan plan, Clearance clearance) {
    return with(
        plan,
        new Confirmations(
            true, plan.confirmations().secondPerson(), Optional.empty(), List.of(), clearance));
  }

  private static RunPlan with(RunPlan p, Confirmations c) {
    return new RunPlan(
        p.runId(), p.tag(), p.family(), p.profile(), p.bench(), p.operator(), p.folder(), c);
  }

  private static RunPlan with(RunPlan p, Profile profile) {
    return new RunPlan(
        p.runId(),
        p.tag(),
        p.family(),
        profile,
        p.bench(),
        p.operator(),
        p.folder(),
        p.confirmations());
  }

  private static RunPlan with(RunPlan p, BenchDescription bench) {
    return new RunPlan(
        p.runId(),
        p.tag(),
        p.family(),
        p.profile(),
        bench,
        p.operator(),
        p.folder(),
        p.confirmations());
  }

  private static RunPlan fixture(RunPlan p, FixtureDescription fixture) {
    return with(p, bench(p, fixture, 0.05, 1e6));
  }

  private static BenchDescription bench(
      RunPlan p, FixtureDescription fixture, double trip_s, double bytesPerSecond) {
    List<Connection> connections =
        p.bench().instruments().stream()
            .map(
                c ->
                    new Connection(
                        c.role(), c.port(), c.baud(), bytesPerSecond, c.dialect(), c.calibration()))
            .toList();
    return new BenchDescription(
        "bench-1", 1, "Test", connections, List.of(), fixture, trip_s, p.bench().origin());
  }

  @Test
  void onALockedBenchItsReferenceUnitsAreStillRun() {
    FakeBench bench = new FakeBench();
    Clearance locked = new Clearance(List.of("Unit G1 came to FAIL."), true, List.of(), List.of());
    assertTrue(
        Guards.ask(cleared(Plans.plan(folder), locked), bench.instruments()).stream()
            .allMatch(GuardFinding::passed));
  }
}
