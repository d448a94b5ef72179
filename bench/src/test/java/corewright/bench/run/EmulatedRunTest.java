package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunEnd;
import corewright.bench.record.Source;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.fault.WireFault;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.BenchFault;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.TrueState;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole runs over pseudo-terminals, on units that are what their parameters say. */
class EmulatedRunTest {
  private static final Profile SHORT =
      Plans.profile(
          "sd48", 20_000, List.of(Plans.DEAD, Plans.FIRST, Plans.REST, Plans.FULL, Plans.AWAY));

  @TempDir Path folder;

  private RunResult run(UnitParameters unit, Profile profile, String where) throws IOException {
    return run(new OnPty(Setup.of(unit, 1)), profile, where);
  }

  private RunResult run(OnPty opened, Profile profile, String where) throws IOException {
    try (OnPty bench = opened;
        BenchInstruments instruments = bench.open()) {
      RunResult result = bench.run(instruments, folder.resolve(where), profile);
      TrueState state = bench.emulated.state();
      assertTrue(
          !state.sourceOn() && !state.loadOn() && !state.relayClosed() && state.discharging(),
          state.toString());
      assertTrue(state.capacitor_V() < 5, state.toString());
      return result;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"ie110", "pv65"})
  void aHealthyUnitOfEachFamilyRunsItsArrivalProfile(String family) throws IOException {
    Profile profile = Catalogue.ofHome().profile(family + "-arrival");
    RunResult result = run(UnitParameters.healthy(family), profile, "run");
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    assertEquals(List.of(), result.troubles());
    assertEquals(Source.EMULATED, result.source());
  }

  @Test
  void theSameSeedGivesTheSameBytes() throws IOException {
    UnitParameters unit = UnitParameters.healthy("sd48");
    RunResult result = run(unit, SHORT, "a");
    run(unit, SHORT, "b");
    assertArrayEquals(
        Files.readAllBytes(folder.resolve("a/run-1.raw")),
        Files.readAllBytes(folder.resolve("b/run-1.raw")));
    Capture capture = result.capture().orElseThrow();
    assertEquals(20_000, capture.size());
    assertEquals(48, capture.output().at(7000), 0.5);
    assertEquals(2, capture.load().orElseThrow().at(19_000), 0.05);
  }

  @Test
  void aLoopbackSocketCarriesTheSameBytesAsASerialLine() throws IOException {
    Setup setup = Setup.of(UnitParameters.healthy("sd48"), 1);
    run(new OnPty(setup), SHORT, "serial");
    RunResult result = run(new OnPty(setup.over(LineKind.LOOPBACK)), SHORT, "loopback");
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    assertArrayEquals(
        Files.readAllBytes(folder.resolve("serial/run-1.raw")),
        Files.readAllBytes(folder.resolve("loopback/run-1.raw")));
  }

  @Test
  void anUnpluggedSocketEndsTheRunSafely() throws IOException {
    Setup setup =
        Setup.of(UnitParameters.healthy("sd48"), 1)
            .over(LineKind.LOOPBACK)
            .with(WireFault.onText("load", WireFault.Kind.UNPLUGGED, "INPut ON.*"));
    RunResult result = run(new OnPty(setup), SHORT, "run");
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().contains("the line is lost"), result.end().saw());
  }

  @Test
  void aShortAtTheInputIsRefusedBehindTheSmallLimit() throws IOException {
    UnitParameters shorted =
        UnitParameters.healthy("sd48").with(Parameter.LEAKAGE, 20); // 50 mΩ across the output
    RunResult result = run(new OnPty(Setup.of(shorted, 1), "meter"), SHORT, "run");
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind(), result.end().saw());
    assertEquals("first", result.end().step());
    assertTrue(result.capture().isEmpty());
  }

  @Test
  void aShortIsFoundWithTheMeterBeforeAnythingIsPowered() throws IOException {
    UnitParameters shorted = UnitParameters.healthy("sd48").with(Parameter.LEAKAGE, 2);
    OnPty pty = new OnPty(Setup.of(shorted, 1));
    RunResult result = run(pty, SHORT, "run");
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind(), result.end().saw());
    assertEquals("dead", result.end().step());
    assertTrue(
        result.end().saw().startsWith("Between the output terminals the meter finds 0."),
        result.end().saw());
    assertEquals(
        0.5,
        result.beside().readings().get(Quantity.DEAD_OUTPUT).measurement().orElseThrow().value(),
        0.2,
        "1 / 2 S");
    assertTrue(pty.emulated.state().case_C() < 23.0001, "no energy has gone into it");
  }

  @Test
  void aCaseThatIsTooHotEndsTheRunWithTheUnitDischarged() throws IOException {
    UnitParameters lossy =
        UnitFault.LOSSY_POWER_STAGE
            .in(UnitParameters.healthy("sd48"), 1)
            .with(Parameter.CASE_TIME, 3);
    Profile hot =
        Plans.profile(
            "sd48",
            20_000,
            85,
            List.of(
                Plans.DEAD, Plans.FIRST, Plans.REST, Plans.hold("half", 12.5, 1, 4), Plans.AWAY));
    Setup oven = Setup.of(lossy, 1);
    RunResult result = run(new OnPty(oven.on(oven.harness().in(85))), hot, "run");
    assertEquals(RunEnd.Kind.TRIPPED, result.end().kind(), result.end().saw());
    assertEquals(RunEnd.Trip.CASE_TOO_HOT, result.end().trip());
    assertEquals("half", result.end().step());
    assertTrue(
        result
            .end()
            .saw()
            .matches("The case was at 9[01]\\.\\d ± 1\\.5 °C; more than 90 °C ends the run\\."),
        result.end().saw());
  }

  @Test
  void theCaseTemperatureIsReadInEveryHold() throws IOException {
    RunResult result =
        run(UnitParameters.healthy("sd48").with(Parameter.CASE_TIME, 1), SHORT, "run");
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    MeasuredRun read =
        RunMeter.read(
            result.capture().orElseThrow(),
            new MeterSettings(
                Optional.empty(), Optional.empty(), Optional.of(48.0), java.util.Map.of()));
    MeasuredRun with = result.beside().with(read);
    assertEquals(2, with.holds().size());
    MeasuredHold full = with.holds().get(1);
    double start_C = full.value(Quantity.CASE_START).orElseThrow().value();
    double end_C = full.value(Quantity.CASE_END).orElseThrow().value();
    double lost_W =
        full.value(Quantity.INPUT).orElseThrow().value()
                * full.value(Quantity.INPUT_CURRENT).orElseThrow().value()
            - full.value(Quantity.OUTPUT).orElseThrow().value()
                * full.value(Quantity.LOAD).orElseThrow().value();
    // first and last question in 0.6 s lie 0.2 to 0.6 s apart; 1.5 K/W, a time constant of 1 s
    double most_K = 1.5 * lost_W * (1 - Math.exp(-0.6)) + 0.1;
    double least_K = 1.5 * lost_W * (1 - Math.exp(-0.2)) * Math.exp(-0.4) - 0.1;
    assertTrue(end_C - start_C < most_K, end_C - start_C + " K, at most " + most_K);
    assertTrue(end_C - start_C > least_K, end_C - start_C + " K, at least " + least_K);
    assertEquals(end_C, full.value(Quantity.CASE_HIGHEST).orElseThrow().value());
    Measurement held = with.reading(Quantity.CAPACITANCE_FROM_DECAY).measurement().orElseThrow();
    assertEquals(2000e-6, held.value(), 2 * held.u(), "the unit's own bleed makes it less");
    assertTrue(with.reading(Quantity.DEAD_OUTPUT).measurement().isPresent());
  }

  @Test
  void aUnitThatCollapsesUnderLoadTrips() throws IOException {
    UnitParameters weak = UnitParameters.healthy("sd48").times(Parameter.CURRENT_LIMIT, 0.15);
    Profile profile =
        Plans.profile(
            "sd48",
            20_000,
            List.of(
                Plans.DEAD, Plans.FIRST, Plans.REST, Plans.hold("full", 12.5, 2, 1.5), Plans.AWAY));
    RunResult result = run(weak, profile, "run");
    assertEquals(RunEnd.Kind.TRIPPED, result.end().kind(), result.end().saw());
    assertEquals(RunEnd.Trip.OUTPUT_UNDER, result.end().trip());
    assertEquals(List.of(), result.troubles(), "it is discharged, and that was seen");
  }

  @Test
  void aDeadUnitIsFoundDeadAndNotBlamedOnTheSource() throws IOException {
    UnitParameters dead = UnitParameters.healthy("sd48").with(Parameter.WORKING, 0);
    RunResult result = run(dead, SHORT, "run");
    assertTrue(
        List.of(RunEnd.Kind.COMPLETED, RunEnd.Kind.TRIPPED).contains(result.end().kind()),
        result.end().saw());
    assertEquals(List.of(), result.troubles());
  }

  /** What shows only cold is not looked for in a unit that worked before. */
  @Test
  void aUnitThatIsStillWarmIsNotTestedAtRoomTemperature() throws IOException {
    Setup cold = Setup.of(UnitParameters.healthy("sd48"), 1);
    RunResult result =
        run(new OnPty(cold.on(BenchFault.SELF_HEATED.in(cold.harness(), 1))), SHORT, "run");
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().startsWith("The unit is at 48"), result.end().saw());
    assertTrue(result.capture().isEmpty(), "nothing was powered");
  }
}
