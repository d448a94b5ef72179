package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.capture.CaptureFile;
import corewright.bench.capture.OpenRuns;
import corewright.bench.capture.Segment;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Source;
import corewright.fixtures.describe.BenchDescription;
import corewright.measures.Capture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A run from its beginning to its end on a bench that is sound. */
class RunEngineTest extends FakeRuns {

  /** Its day is what a certificate is held against; see the tests of certificates. */
  @Test
  void aChannelThatWasCalibratedByItselfAndContactsWithADayAreNamedAmongTheEquipment() {
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
            List.of(),
            Optional.of(new BenchDescription.Contacts(0.05, "0.031 Ω, due 2026-10-01")),
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
        List.of(
            "channel output: K-88, due 2026-11-01",
            "contacts of the fixture: 0.031 Ω, due 2026-10-01"),
        run(plan).equipment().stream()
            .filter(e -> e.role().startsWith("c"))
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
}
