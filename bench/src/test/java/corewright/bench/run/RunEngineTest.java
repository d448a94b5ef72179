package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.capture.CaptureFile;
import corewright.bench.capture.OpenRuns;
import corewright.bench.capture.Segment;
import corewright.bench.port.InstrumentFault;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Source;
import corewright.fixtures.describe.BenchDescription;
import corewright.measures.Capture;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunEngineTest {
  @TempDir Path folder;
  private final FakeBench bench = new FakeBench();

  private RunResult run(RunPlan plan) {
    return run(plan, RunListener.NONE, new Stop());
  }

  private RunResult run(RunPlan plan, RunListener listener, Stop stop) {
    return new RunEngine(bench.clock).run(plan, bench.instruments(), listener, stop);
  }

  private void isSafe() {
    assertFalse(bench.unit.relayClosed, "relay");
    assertFalse(bench.unit.loadOn, "load");
    assertTrue(bench.unit.discharging, "discharge");
    assertTrue(bench.unit.capacitor_V < 5, bench.unit.capacitor_V + " V");
  }

  /** Its day is what a certificate is held against; see the tests of certificates. */
  @Test
  void aChannelThatWasCalibratedByItselfIsNamedAmongTheEquipment() {
    BenchDescription b = Plans.bench();
    BenchDescription calibrated =
        new BenchDescription(
            b.id(),
            b.revision(),
            b.title(),
            b.instruments(),
            List.of(
                new BenchDescription.ChannelCalibration(
                    "output", 0.001, 0.001, "K-88, due 2026-11-01"),
                new BenchDescription.ChannelCalibration("load", 0.001, 0.001, "not calibrated")),
            b.fixture(),
            b.trip_s(),
            b.origin());
    RunPlan p = Plans.plan(folder);
    RunPlan plan =
        new RunPlan(
            p.runId(),
            p.tag(),
            p.family(),
            p.profile(),
            calibrated,
            p.operator(),
            p.folder(),
            p.confirmations());
    assertEquals(
        List.of("channel output: K-88, due 2026-11-01"),
        run(plan).equipment().stream()
            .filter(e -> e.role().startsWith("channel"))
            .map(e -> e.role() + ": " + e.calibration())
            .toList());
  }

  @Test
  void aGoodUnitRunsToItsEndAndLeavesACapture() throws IOException {
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    assertEquals(List.of(), result.troubles());
    assertEquals(Source.EMULATED, result.source());
    assertEquals(
        new EquipmentUsed("source", "COREWRIGHT,EMULATED-THING,source,1", "cal source"),
        result.equipment().get(1));
    assertTrue(result.guards().stream().allMatch(GuardFinding::passed));
    isSafe();

    Path file = result.file().orElseThrow();
    assertEquals(CaptureFile.sha256(file), result.sha256());
    assertEquals(
        List.of("dead", "first", "rest", "full", "discharge"),
        CaptureFile.read(file).segments().stream().map(Segment::id).toList());
    Capture holds = result.capture().orElseThrow();
    assertEquals(1000, holds.size(), "0.4 s and 0.6 s at 1000 samples a second, nothing else");
    assertEquals(48.0, holds.output().at(300), 0.01);
    assertEquals(47.8, holds.output().at(900), 0.01);
    assertEquals(2.0, holds.load().orElseThrow().at(405), 1e-9);
    assertEquals(List.of(), holds.gaps());
    assertTrue(Files.exists(folder.resolve("run-1.begun")), "open until it is settled");
    OpenRuns.settled(result.run());
    assertEquals(List.of(), OpenRuns.in(folder));
  }

  @Test
  void aBenchThatIsNotEmulatedIsABench() {
    bench.model = "LOAD-60";
    assertEquals(Source.BENCH, run(Plans.plan(folder)).source());
  }

  @Test
  void theProfileAdvancesOnSamplesWhateverTheHostsClockDoes() throws IOException {
    run(Plans.plan(folder.resolve("fast")));
    FakeBench other = new FakeBench();
    other.slowness = 1.4;
    new RunEngine(other.clock)
        .run(Plans.plan(folder.resolve("slow")), other.instruments(), RunListener.NONE, new Stop());
    assertArrayEquals(
        Files.readAllBytes(folder.resolve("fast/run-1.raw")),
        Files.readAllBytes(folder.resolve("slow/run-1.raw")));
  }

  @Test
  void aDigitizerThatCountsTooSlowlyDoesNotKeepTheUnitEnergised() {
    bench.slowness = 1000; // a second of samples takes a quarter of an hour
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertEquals("The step took longer than its samples account for.", result.end().saw());
    assertFalse(bench.unit.sourceOn || bench.unit.relayClosed);
  }

  @Test
  void protectionIsProgrammedBeforeAnyOutputIsSwitchedOn() {
    run(Plans.plan(folder));
    List<String> told = bench.told;
    assertTrue(told.indexOf("source protect 16.0 18.0") >= 0, told.toString());
    assertTrue(told.indexOf("source protect 16.0 18.0") < told.indexOf("source output true"));
    assertTrue(told.indexOf("source output true") < told.indexOf("load input true"));
    assertTrue(told.indexOf("interlock whole?") < told.indexOf("source protect 16.0 18.0"));
  }

  @Test
  void onlyWhatChangesIsSentAndTheSourceIsGivenRoomBeforeTheLoadTakesIt() {
    run(
        Plans.plan(
            folder,
            Plans.profile(
                Plans.DEAD,
                Plans.FIRST,
                Plans.hold("a", 12.5, 1, 0.1),
                Plans.hold("b", 12.5, 1, 0.1),
                Plans.hold("c", 14, 2, 0.1),
                Plans.hold("d", 12.5, 0.5, 0.1),
                Plans.AWAY)));
    List<String> told = bench.told;
    assertEquals(
        List.of(
            "load set 1.0",
            "load input true",
            "source set",
            "load set 2.0",
            "load set 0.5",
            "source set"),
        told.subList(told.indexOf("load set 1.0"), told.lastIndexOf("source set") + 1));
  }

  @Test
  void aDeadShortIsNeverEnergisedPastTheLimitedStep() {
    bench.unit.shorted = true;
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind());
    assertEquals("first", result.end().step());
    assertTrue(result.end().saw().startsWith("The unit took the whole 0.50 A"), result.end().saw());
    assertTrue(bench.unit.limit_A <= 0.5, "the limit was never raised");
    assertFalse(bench.told.contains("load input true"));
    assertTrue(result.capture().isEmpty());
    isSafe();
  }

  @Test
  void aUnitThatIsChargedAndCannotBeDischargedIsNotPowered() {
    bench.unit.capacitor_V = 37;
    bench.unit.dischargeBroken = true;
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind());
    assertTrue(result.end().saw().startsWith("The output still holds 37.00 V after 4.2 s"));
    assertFalse(bench.told.contains("source output true"));
    assertEquals(1, result.troubles().size(), "and it still is: " + result.troubles());
  }

  @Test
  void chargeThatComesBackWithTheResistorLiftedIsSeen() {
    bench.unit.hidden_A = 0.002; // 1 V/s into 2000 µF
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind());
    assertTrue(result.end().saw().contains("charge is left inside"), result.end().saw());
  }

  @Test
  void aChargedUnitIsDischargedFirstAndThenRun() {
    bench.unit.capacitor_V = 48;
    assertEquals(RunEnd.Kind.COMPLETED, run(Plans.plan(folder)).end().kind());
    isSafe();
  }

  @Test
  void aSourceThatWillNotSwitchOffIsNoticedAndTheRelayParts() {
    bench.unit.sourceSticks = true;
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().startsWith("The source is still on"), result.end().saw());
    isSafe();
  }

  @Test
  void aSourceThatCannotSayIsJudgedByItsVoltage() {
    bench.sourceSays = false;
    assertEquals(RunEnd.Kind.COMPLETED, run(Plans.plan(folder.resolve("good"))).end().kind());
    bench.unit.sourceSticks = true;
    assertTrue(run(Plans.plan(folder.resolve("stuck"))).end().saw().contains("at 12.50 ± 0.02 V"));
  }

  @Test
  void aDischargeThatDoesNotHappenIsAFaultOfTheBench() {
    RunListener breaks =
        new RunListener() {
          @Override
          public void step(Step step, int index, int count) {
            bench.unit.dischargeBroken = step.kind() == Step.Kind.DISCHARGE;
          }
        };
    RunResult result = run(Plans.plan(folder), breaks, new Stop());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().remedy().startsWith("Treat the unit as charged"));
    assertFalse(result.troubles().isEmpty());
  }

  @Test
  void aPersonCanStopItAtAnyTime() {
    Stop stop = new Stop();
    RunListener presses =
        new RunListener() {
          @Override
          public void progress(double done_s, double total_s) {
            if (done_s > 4.6) {
              stop.request("The operator pressed Ctrl-C.");
            }
          }
        };
    RunResult result = run(Plans.plan(folder), presses, stop);
    assertEquals(RunEnd.Kind.STOPPED, result.end().kind());
    assertEquals("full", result.end().step());
    assertEquals("The operator pressed Ctrl-C.", result.end().saw());
    assertEquals(List.of(), result.troubles());
    assertTrue(result.capture().orElseThrow().size() < 1000);
    isSafe();
  }

  @Test
  void aMistakeOfTheStationItselfEndsSafeToo() {
    RunListener throwsUp =
        new RunListener() {
          @Override
          public void step(Step step, int index, int count) {
            if (step.id().equals("full")) {
              throw new IllegalStateException("a bug");
            }
          }
        };
    RunResult result = run(Plans.plan(folder), throwsUp, new Stop());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().contains("a bug"), result.end().saw());
    isSafe();
  }

  @Test
  void evenWhenTheVirtualMachineGivesUpTheBenchIsSafe() {
    bench.before =
        command -> {
          if (command.equals("load input true")) {
            throw new OutOfMemoryError("made up");
          }
        };
    try {
      run(Plans.plan(folder));
    } catch (OutOfMemoryError expected) {
      assertEquals("made up", expected.getMessage());
    }
    assertFalse(bench.unit.sourceOn || bench.unit.relayClosed || !bench.unit.discharging);
  }

  @Test
  void aSilentDigitizerEndsTheRunAndSaysThatTheDischargeWasNotVerified() {
    bench.before =
        command -> {
          if (command.equals("digitizer next") && bench.told.contains("load input true")) {
            throw new InstrumentFault("digitizer", "sampling", "no frame within 400 ms", "Look.");
          }
        };
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertEquals("digitizer: sampling: no frame within 400 ms.", result.end().saw());
    assertEquals("Look.", result.end().remedy());
    assertEquals("full", result.end().step());
    assertTrue(result.troubles().get(0).startsWith("Verifying the discharge failed"));
    assertFalse(bench.unit.sourceOn || bench.unit.relayClosed || !bench.unit.discharging);
  }

  @Test
  void theStationTellsTheFixtureThatItIsAlive() {
    bench.slowness = 1;
    List<Long> heard = new ArrayList<>();
    bench.before =
        command -> {
          if (command.equals("digitizer heartbeat")) {
            heard.add(bench.clock.nanos());
          }
        };
    run(Plans.plan(folder));
    for (int i = 2; i < heard.size(); i++) {
      assertTrue(heard.get(i) - heard.get(i - 1) < 300_000_000, "under the hold-off of 500 ms");
    }
    assertTrue(heard.size() > 20);
  }

  @Test
  void nothingIsCommandedIfTheRunCannotBeRemembered() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    try {
      run(Plans.plan(file));
    } catch (java.io.UncheckedIOException expected) {
      assertEquals(List.of(), bench.told);
      return;
    }
    throw new AssertionError("a run was begun that nobody could find again");
  }

  @Test
  void aFixtureThatHoldsItsResistorOnIsMadeToLetGoBeforeTheUnitIsLookedAt() {
    bench.unit.heldOn = true;
    bench.unit.hidden_A = 0.004; // a capacitor behind a diode: seen only with the resistor lifted
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, run(Plans.plan(folder)).end().kind());
    int closed = bench.told.indexOf("digitizer relay true");
    assertEquals("digitizer relay false", bench.told.get(closed + 1));
    assertFalse(bench.told.contains("source output true"));
  }

  @Test
  void aMeterThatFindsVoltageWhereTheDigitizerFindsNoneIsBelieved() {
    bench.unit.capacitor_V = 30;
    bench.unit.dischargeBroken = true;
    bench.frames =
        f -> {
          java.util.Arrays.fill(f.codes()[1], (short) 0); // its lead is off
          return f;
        };
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind());
    assertTrue(result.end().saw().startsWith("The meter finds 30.0"), result.end().saw());
    assertFalse(bench.told.contains("source output true"));
  }

  @Test
  void withoutAMeterAnOutputThatWasNeverSeenLiveProvesNothing() {
    bench.hasMeter = false;
    bench.unit.regulates_V = 3;
    Profile rest = Plans.profile(Plans.DEAD, Plans.FIRST, Plans.REST, Plans.AWAY);
    RunResult result = run(Plans.plan(folder, rest));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().contains("is not proved"), result.end().saw());
  }

  @Test
  void aFallThatIsMuchSlowerThanTheResistorMakesItIsNoDischarge() {
    bench.unit.regulates_V = 20; // from here within_s alone would allow three times as long
    RunListener weak =
        new RunListener() {
          @Override
          public void step(Step step, int index, int count) {
            // 2.7 times the resistance: what the resistor takes, less what comes back
            bench.unit.resistance_factor = step.kind() == Step.Kind.DISCHARGE ? 2.7 : 1;
          }
        };
    Profile rest = Plans.profile(Plans.DEAD, Plans.FIRST, Plans.REST, Plans.AWAY);
    RunResult result = run(Plans.plan(folder, rest), weak, new Stop());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind(), result.end().saw());
    assertTrue(
        result.end().saw().startsWith("The output fell with a time constant of 2.53"),
        result.end().saw());
  }

  @Test
  void theFallTellsTheCapacitance() {
    RunResult result = run(Plans.plan(folder));
    Measurement found =
        result.beside().readings().get(Quantity.CAPACITANCE_FROM_DECAY).measurement().orElseThrow();
    assertEquals(FakeUnit.CAPACITANCE_F, found.value(), 0.01 * FakeUnit.CAPACITANCE_F, "τ / 470 Ω");
    assertEquals(0.07, found.u() / found.value(), 0.005);
  }
}
