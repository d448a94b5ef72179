package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunEnd;
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
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

  @Test
  void tenLinesASecondGiveTheMeansAndLeaveTheRippleUnmeasured() throws IOException {
    RunResult result = run(Digitizing.LOGGER, "emulated-sd48-lines", at(10, 5));
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
