package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunEnd;
import corewright.bench.record.Source;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.TrueState;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.Capture;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
    try (OnPty bench = new OnPty(Setup.of(unit, 1));
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
  void aShortAtTheInputIsRefusedBehindTheSmallLimit() throws IOException {
    UnitParameters shorted =
        UnitParameters.healthy("sd48").with(Parameter.LEAKAGE, 20); // 50 mΩ across the output
    RunResult result = run(shorted, SHORT, "run");
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind(), result.end().saw());
    assertEquals("first", result.end().step());
    assertTrue(result.capture().isEmpty());
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
}
