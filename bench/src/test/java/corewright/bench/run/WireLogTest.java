package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Links;
import corewright.bench.record.RunEnd;
import corewright.bench.wirelog.PlayedLog;
import corewright.bench.wirelog.WireLog;
import corewright.fixtures.emulate.Digitizing;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.fault.WireFault;
import corewright.fixtures.emulate.fault.WireFault.Kind;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is played back is what was: the same samples, readings and end, with no bench there. */
class WireLogTest {
  private static final Clock SYSTEM = Clock.system();
  private static final UnitParameters UNIT = UnitParameters.healthy("sd48");
  private static final Profile SHORT =
      Plans.profile(
          "sd48",
          2000,
          List.of(
              Plans.DEAD,
              new Step("first", Step.Kind.FIRST_POWER, "First power", 12.5, 0.5, 0, 1.5, false),
              Plans.REST,
              Plans.FULL,
              Plans.AWAY));

  @TempDir Path folder;

  static Stream<List<WireFault>> runs() {
    return Stream.of(
        List.of(),
        List.of(WireFault.onText("load", Kind.GARBAGE, "SOURce:CURRent 2.*")),
        List.of(WireFault.onText("load", Kind.UNPLUGGED, "INPut ON.*")),
        List.of(WireFault.atSample("digitizer", Kind.CRC_ERROR, 6000)),
        List.of(WireFault.atSample("digitizer", Kind.NO_ANSWER, 6000)));
  }

  private RunResult logged(List<WireFault> faults) throws IOException {
    Setup setup = Setup.of(UNIT, 1).with(faults.toArray(WireFault[]::new));
    try (WireLog log = WireLog.begin(folder.resolve("wire.log"), SYSTEM);
        OnPty pty = new OnPty(setup)) {
      Clock clock = log.over(SYSTEM);
      try (BenchInstruments bench = pty.open(log.over(OnPty.links()), clock)) {
        return pty.run(bench, folder.resolve("then"), SHORT, RunListener.NONE, clock);
      }
    }
  }

  private RunResult played(PlayedLog log, Profile profile) throws IOException {
    Clock clock = log.clock(SYSTEM);
    try (OnPty description = new OnPty(Setup.of(UNIT, 1));
        BenchInstruments bench = description.open(log, clock)) {
      return description.run(bench, folder.resolve("now"), profile, RunListener.NONE, clock);
    }
  }

  @ParameterizedTest
  @MethodSource("runs")
  void theSameBytesMakeTheSameRun(List<WireFault> faults) throws IOException {
    RunResult then = logged(faults);
    PlayedLog log = PlayedLog.of(folder.resolve("wire.log"));
    RunResult now = played(log, SHORT);
    assertEquals(then.end(), now.end());
    assertEquals(then.troubles(), now.troubles());
    assertEquals(then.guards(), now.guards());
    assertEquals(then.beside(), now.beside());
    assertArrayEquals(
        Files.readAllBytes(folder.resolve("then/run-1.raw")),
        Files.readAllBytes(folder.resolve("now/run-1.raw")));
    assertEquals(0, log.left(), "events that nobody asked for");
  }

  /** One of the answers is broken, and is so again: a tenth of a second in which nobody looks. */
  @Test
  void registersAreReadFromTheLogAsFromTheLine() throws IOException {
    Setup setup =
        Setup.of(UNIT, 1)
            .over(LineKind.LOOPBACK)
            .sampledBy(Digitizing.REGISTERS)
            .with(WireFault.atMessage("digitizer", Kind.CRC_ERROR, 20));
    Profile slow =
        Plans.profile(
            "sd48", 10, List.of(Plans.DEAD, Plans.FIRST, Plans.REST, Plans.FULL, Plans.AWAY));
    RunResult then;
    try (WireLog log = WireLog.begin(folder.resolve("wire.log"), SYSTEM);
        OnPty bench = OnPty.described(setup, "emulated-sd48-registers")) {
      Clock clock = log.over(SYSTEM);
      try (BenchInstruments open = bench.open(log.over(OnPty.links()), clock)) {
        then = bench.run(open, folder.resolve("then"), slow, RunListener.NONE, clock);
      }
    }
    assertTrue(then.end().saw().contains("blind for 100.0 ms"), then.end().saw());
    PlayedLog log = PlayedLog.of(folder.resolve("wire.log"));
    Clock clock = log.clock(SYSTEM);
    try (OnPty bench = OnPty.described(setup, "emulated-sd48-registers");
        BenchInstruments open = bench.open(log, clock)) {
      assertEquals(
          then.end(), bench.run(open, folder.resolve("now"), slow, RunListener.NONE, clock).end());
    }
    assertArrayEquals(
        Files.readAllBytes(folder.resolve("then/run-1.raw")),
        Files.readAllBytes(folder.resolve("now/run-1.raw")));
    assertEquals(0, log.left(), "events that nobody asked for");
  }

  @Test
  void aStationThatDoesSomethingElseIsToldSo() throws IOException {
    logged(List.of());
    Profile other =
        Plans.profile(
            "sd48",
            2000,
            List.of(
                Plans.DEAD,
                new Step("first", Step.Kind.FIRST_POWER, "First power", 12.0, 0.5, 0, 1.5, false),
                Plans.FULL,
                Plans.AWAY));
    RunResult now = played(PlayedLog.of(folder.resolve("wire.log")), other);
    assertEquals(RunEnd.Kind.BENCH_FAULT, now.end().kind());
    assertTrue(now.end().saw().contains("the station writes "), now.end().saw());
  }

  @Test
  void whatIsNoWireLogIsRefusedWithItsLine() throws IOException {
    Path file = folder.resolve("wire.log");
    Files.writeString(file, "hello\n");
    String first =
        assertThrows(IllegalArgumentException.class, () -> PlayedLog.of(file)).getMessage();
    assertEquals(file + ":1: this is no wire log", first);
    Files.writeString(file, "corewright wire log 1\nbegan now\n12 load ? 00\n");
    String third =
        assertThrows(IllegalArgumentException.class, () -> PlayedLog.of(file)).getMessage();
    assertEquals(file + ":3: '?' is no mark of an event", third);
    Links none = PlayedLog.of(write(file, "corewright wire log 1\nbegan now\n"));
    assertThrows(
        corewright.bench.port.InstrumentFault.class,
        () -> none.open("load", "x", 1).write(new byte[1], java.time.Duration.ZERO));
  }

  /** A program that was killed leaves half a line. */
  @Test
  void whatStandsBeforeATornEndIsPlayed() throws IOException {
    Path file = folder.resolve("wire.log");
    String head = "corewright wire log 1\nbegan now\n";
    PlayedLog log = PlayedLog.of(write(file, head + "12 load > 41\n13 load < 4"));
    log.open("load", "x", 1).write(new byte[] {'A'}, java.time.Duration.ZERO);
    assertEquals(0, log.left());
    assertEquals(false, log.isAstray());
    assertThrows(
        corewright.bench.port.InstrumentFault.class,
        () -> log.open("load", "x", 1).read(new byte[1], java.time.Duration.ZERO));
    assertEquals(true, log.isAstray());
    assertEquals(0, PlayedLog.of(write(file, head)).left());
  }

  private static Path write(Path file, String text) throws IOException {
    return Files.writeString(file, text);
  }
}
