package corewright.bench.run;

import static corewright.fixtures.emulate.fault.WireFault.atSample;
import static corewright.fixtures.emulate.fault.WireFault.onText;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.record.RunEnd;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.fault.WireFault;
import corewright.fixtures.emulate.fault.WireFault.Kind;
import corewright.fixtures.emulate.unit.TrueState;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The twelve failures of instruments, over pseudo-terminals. What is asserted is what really became
 * of the unit, never what was commanded.
 */
class WireFailuresTest {
  /** At 10 000 samples a second: dead check to 1 s, first power to 2.5 s, full load from 2.6 s. */
  private static final Profile PROFILE =
      Plans.profile(
          "sd48",
          10_000,
          List.of(
              Plans.DEAD,
              new Step("first", Step.Kind.FIRST_POWER, "First power", 12.5, 0.5, 0, 1.5, false),
              Plans.hold("rest", 12.5, 0, 0.1),
              Plans.hold("full", 12.5, 2, 0.4),
              Plans.AWAY));

  private static final long IN_FULL = 28_500;

  @TempDir Path folder;

  /**
   * One failure.
   *
   * @param end how the run must end
   * @param saw part of what it must say
   */
  record Failure(String name, WireFault fault, RunEnd.Kind end, String saw) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Failure> failures() {
    RunEnd.Kind fault = RunEnd.Kind.BENCH_FAULT;
    return Stream.of(
        new Failure(
            "no answer",
            onText("load", Kind.NO_ANSWER, "INPut ON.*"),
            fault,
            "no answer within 300 ms"),
        new Failure(
            "no answer from the source when it is switched on",
            onText("source", Kind.NO_ANSWER, "OUTPut ON.*"),
            fault,
            "no answer within 300 ms"),
        new Failure(
            "half an answer",
            onText("load", Kind.HALF_ANSWER, "INPut ON.*"),
            fault,
            "only '1' and no end of line"),
        new Failure("garbage", onText("load", Kind.GARBAGE, "SOURce:CURRent 2.*"), fault, "is not"),
        new Failure(
            "a refused command",
            onText("load", Kind.REFUSED, "INPut ON.*"),
            fault,
            "no answer within"),
        new Failure(
            "one broken frame is a gap and no more",
            atSample("digitizer", Kind.CRC_ERROR, IN_FULL),
            RunEnd.Kind.COMPLETED,
            ""),
        new Failure(
            "one lost frame is a gap and no more",
            atSample("digitizer", Kind.LOST_FRAME, IN_FULL),
            RunEnd.Kind.COMPLETED,
            ""),
        new Failure(
            "a repeated frame is dropped",
            atSample("digitizer", Kind.REPEATED_FRAME, IN_FULL),
            RunEnd.Kind.COMPLETED,
            ""),
        new Failure(
            "half a frame",
            atSample("digitizer", Kind.HALF_ANSWER, IN_FULL),
            fault,
            "no frame within 400 ms"),
        new Failure(
            "a frame of garbage",
            atSample("digitizer", Kind.GARBAGE, IN_FULL),
            fault,
            "no frame within 400 ms"),
        new Failure(
            "a silent digitizer",
            atSample("digitizer", Kind.NO_ANSWER, IN_FULL),
            fault,
            "no frame within 400 ms"),
        new Failure(
            "digitizer unplugged while loaded",
            atSample("digitizer", Kind.UNPLUGGED, IN_FULL),
            fault,
            "the line is lost"),
        new Failure(
            "load unplugged when it is switched on",
            onText("load", Kind.UNPLUGGED, "INPut ON.*"),
            fault,
            "the line is lost"),
        new Failure(
            "a source that will not switch off",
            onText("source", Kind.STAYS_ON, "OUTPut ON.*"),
            fault,
            "The source is still on after it was switched off"),
        new Failure(
            "the interlock opening in a hold",
            atSample("interlock", Kind.CHAIN_OPENS, IN_FULL),
            fault,
            "The interlock chain opened."));
  }

  @ParameterizedTest
  @MethodSource("failures")
  void theUnitIsLeftWithoutChargeAndWithoutFeed(Failure failure) throws IOException {
    Setup setup = Setup.of(UnitParameters.healthy("sd48"), 1).with(failure.fault());
    try (OnPty pty = new OnPty(setup);
        BenchInstruments bench = pty.open()) {
      RunResult result =
          Assertions.assertTimeout(Duration.ofSeconds(20), () -> pty.run(bench, folder, PROFILE));
      assertEquals(failure.end(), result.end().kind(), result.end().saw());
      assertTrue(result.end().saw().contains(failure.saw()), result.end().saw());
      assertEquals(
          failure.end() == RunEnd.Kind.COMPLETED, result.end().remedy().isEmpty(), "remedy");
      isSafe(pty);
    }
  }

  private static void isSafe(OnPty pty) {
    // A board that hears nothing opens its relay and connects the discharge by itself, 500 ms of
    // host
    // time after it last heard. That is what is left where the discharge switch cannot be told.
    for (int i = 0;
        i < 70 && (pty.emulated.state().relayClosed() || !pty.emulated.state().discharging());
        i++) {
      Clock.system().pause(Duration.ofMillis(10));
    }
    for (int i = 0; i < 6 && pty.emulated.state().capacitor_V() >= 5; i++) {
      pty.emulated.letPass(1); // with a dead board nobody let the time pass in which charge goes
    }
    TrueState state = pty.emulated.state();
    assertFalse(state.relayClosed(), state.toString());
    assertTrue(state.discharging(), state.toString());
    assertTrue(state.capacitor_V() < 5, state.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"load", "source", "digitizer", "switch"})
  void anInstrumentUnpluggedWhileClosingIsNoticed(String role) throws IOException {
    try (OnPty pty = new OnPty(Setup.of(UnitParameters.healthy("sd48"), 1));
        BenchInstruments bench = pty.open()) {
      RunListener pulls =
          new RunListener() {
            @Override
            public void step(Step step, int index, int count) {
              if (step.kind() == Step.Kind.DISCHARGE) {
                pty.emulated.unplug(role);
              }
            }
          };
      RunResult result = pty.run(bench, folder, PROFILE, pulls);
      assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
      assertTrue(result.end().saw().contains("the line is lost"), result.end().saw());
      assertFalse(result.troubles().isEmpty());
      isSafe(pty);
    }
  }

  @Test
  void aStrangerIsRefusedBeforeAnythingIsEnergised() throws IOException {
    Setup setup =
        Setup.of(UnitParameters.healthy("sd48"), 1)
            .with(WireFault.atMessage("source", Kind.WRONG_IDENTITY, 0));
    try (OnPty pty = new OnPty(setup)) {
      InstrumentFault fault = assertThrows(InstrumentFault.class, pty::open);
      assertEquals("source", fault.instrument());
      assertTrue(fault.found().startsWith("'OTHER WORKS,MODEL 1,0,0' answers"), fault.getMessage());
      assertFalse(pty.emulated.state().sourceOn());
      isSafe(pty);
      for (String port : pty.emulated.ports().values()) {
        new SerialLinks(Clock.system()).open("any", port, 115_200).close(); // all were given back
      }
    }
  }

  @Test
  void anInstrumentUnpluggedWhileIdleIsNoticedBeforeAnythingIsEnergised() throws IOException {
    try (OnPty pty = new OnPty(Setup.of(UnitParameters.healthy("sd48"), 1));
        BenchInstruments bench = pty.open()) {
      pty.emulated.unplug("load");
      RunResult result = pty.run(bench, folder, PROFILE);
      assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
      assertTrue(result.end().saw().startsWith("load: "), result.end().saw());
      assertTrue(result.end().remedy().contains("plugged in"), result.end().remedy());
      isSafe(pty);
    }
  }
}
