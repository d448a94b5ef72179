package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Links;
import corewright.bench.record.RunEnd;
import corewright.fixtures.describe.Characters;
import corewright.fixtures.emulate.Digitizing;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.fault.WireFault;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.TrueState;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.MeasuredHold;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Profile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Whole runs on benches whose digitizer only samples. */
class PlainRunTest {
  @TempDir Path folder;

  private RunResult run(Digitizing digitizing, String bench, Profile profile, WireFault... faults)
      throws IOException {
    Setup setup =
        Setup.of(UnitParameters.healthy("sd48"), 1)
            .over(LineKind.LOOPBACK)
            .sampledBy(digitizing)
            .with(faults);
    try (OnPty opened = OnPty.described(setup, bench);
        BenchInstruments instruments = opened.open()) {
      RunResult result = opened.run(instruments, folder, profile);
      TrueState state = opened.emulated.state();
      assertTrue(!state.sourceOn() && !state.relayClosed() && state.discharging(), "" + state);
      return result;
    }
  }

  private static Profile at(double rate_Hz, double hold_s) {
    return Plans.profile(
        "sd48",
        rate_Hz,
        List.of(
            Plans.DEAD,
            Plans.FIRST,
            Plans.hold("rest", 12.5, 0, hold_s),
            Plans.hold("full", 12.5, 2, hold_s),
            Plans.AWAY));
  }

  @ParameterizedTest
  @CsvSource({"LOGGER, emulated-sd48-lines", "REGISTERS, emulated-sd48-registers"})
  void tenSamplesASecondGiveTheMeansAndLeaveTheRippleUnmeasured(Digitizing by, String bench)
      throws IOException {
    RunResult result = run(by, bench, at(10, 5));
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    List<MeasuredHold> holds =
        RunMeter.read(result.capture().orElseThrow(), MeterSettings.defaults()).holds();
    MeasuredHold full = holds.get(holds.size() - 1);
    Reading.Measured volts =
        assertInstanceOf(Reading.Measured.class, full.readings().get(Quantity.OUTPUT));
    assertEquals(48, volts.value().value(), 0.5);
    for (Quantity fast :
        List.of(Quantity.RIPPLE_PEAK_TO_PEAK, Quantity.UNDERSHOOT, Quantity.RECOVERY)) {
      Reading.NotMeasured none =
          assertInstanceOf(Reading.NotMeasured.class, full.readings().get(fast), fast.toString());
      assertTrue(none.reason().contains("not measurable"), fast + ": " + none.reason());
    }
  }

  @Test
  void blocksGiveTheSameRunAsAnyStream() throws IOException {
    RunResult result = run(Digitizing.SCOPE, "emulated-sd48-blocks", at(20_000, 0.5));
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    List<MeasuredHold> holds =
        RunMeter.read(result.capture().orElseThrow(), MeterSettings.defaults()).holds();
    Reading.Measured volts =
        assertInstanceOf(
            Reading.Measured.class, holds.get(holds.size() - 1).readings().get(Quantity.OUTPUT));
    assertEquals(48, volts.value().value(), 0.5);
  }

  /** An answer that is broken is a sample that is missing; nothing in its place is read. */
  @ParameterizedTest
  @EnumSource(names = {"CRC_ERROR", "HALF_ANSWER", "GARBAGE"})
  void aBrokenAnswerIsAMissingSample(WireFault.Kind broken) throws IOException {
    WireFault fault = WireFault.atMessage("digitizer", broken, 4);
    try (OnPty bench = registers(fault);
        BenchInstruments instruments = bench.open()) {
      Digitizer digitizer = instruments.digitizer();
      digitizer.start(10, 1);
      List<Long> first = new ArrayList<>();
      List<Boolean> lost = new ArrayList<>();
      List<Integer> brokenBefore = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        Digitizer.Frame frame = digitizer.next(Duration.ofMillis(500));
        first.add(frame.first());
        lost.add(frame.status().lostBefore());
        brokenBefore.add(frame.brokenBefore());
      }
      assertEquals(List.of(0L, 1L, 3L, 4L), first);
      assertEquals(List.of(false, false, true, false), lost);
      assertEquals(List.of(0, 0, 1, 0), brokenBefore);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "REFUSED, 'it refuses with exception 4, server device failure'",
    "NO_ANSWER, no answer within 300 ms",
    "UNPLUGGED, the line is lost"
  })
  void aRefusalOrSilenceEndsTheRunWithoutAVerdict(WireFault.Kind kind, String found)
      throws IOException {
    RunResult result =
        run(
            Digitizing.REGISTERS,
            "emulated-sd48-registers",
            at(10, 1),
            WireFault.atMessage("digitizer", kind, 20));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().contains(found), result.end().saw());
  }

  @Test
  void realNumbersReadAsTheCodesDo() throws IOException {
    try (OnPty bench = registers()) {
      List<Double> codes = unpowered(bench, "emulated-registers");
      List<Double> reals = unpowered(bench, "emulated-registers-real");
      for (int c = 0; c < 4; c++) {
        assertEquals(codes.get(c), reals.get(c), 0.05, "channel " + c);
      }
    }
  }

  /** Even parity is the default of the Modbus standard; whoever has set another writes it down. */
  @Test
  void eachLineIsSetAsTheBenchsFileSays() throws IOException {
    Map<String, Characters> said =
        Map.of(
            "digitizer", Characters.EVEN_1, "load", Characters.ODD_1, "source", Characters.NONE_2);
    Map<String, Characters> set = new HashMap<>();
    Links links =
        (role, port, baud, characters) -> {
          set.put(role, characters);
          return OnPty.links().open(role, port, baud, characters);
        };
    try (OnPty bench = registers()) {
      bench.openSet(links, said).close();
    }
    set.values().removeIf(Characters.NONE_1::equals);
    assertEquals(said, set);
  }

  private static List<Double> unpowered(OnPty bench, String dialect) {
    try (BenchInstruments instruments = bench.openWith("digitizer", dialect)) {
      instruments.source().protect(16, 20);
      instruments.source().set(12, 1);
      instruments.source().output(true);
      instruments.relay().relay(true);
      Digitizer digitizer = instruments.digitizer();
      digitizer.start(10, 10);
      Digitizer.Frame frame = digitizer.next(Duration.ofSeconds(2));
      List<Double> values = new ArrayList<>();
      for (int c = 0; c < 4; c++) {
        Digitizer.Channel channel = digitizer.channels().get(c);
        values.add(frame.codes()[c][9] * channel.lsb() + channel.offset());
      }
      instruments.source().off();
      return values;
    }
  }

  private static OnPty registers(WireFault... faults) throws IOException {
    Setup setup =
        Setup.of(UnitParameters.healthy("sd48"), 1)
            .over(LineKind.LOOPBACK)
            .sampledBy(Digitizing.REGISTERS)
            .with(faults);
    return OnPty.described(setup, "emulated-sd48-registers");
  }

  @Test
  void aChainThatOpensIsSeenThroughTheRelayBox() throws IOException {
    RunResult result =
        run(
            Digitizing.SCOPE,
            "emulated-sd48-blocks",
            at(2000, 2),
            WireFault.atSample("relay", WireFault.Kind.CHAIN_OPENS, 9000));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().contains("interlock chain opened"), result.end().saw());
  }
}
