package corewright.bench.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.judge.Judge;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.fixtures.emulate.unit.Circuit;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.Supply;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.Capture;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Records of other shapes than those that were counted, with the group that was made faulty: a load
 * that is never off, and a start, in which the input is lowered within the longest hold. 10 kS/s
 * without ripple, from the emulated circuit.
 */
class OtherRecordsTest {
  private static final int RATE_HZ = 10_000;
  private static final double LSB = 1e-4;

  /** Input, V; load, A; time, s. */
  private static final double[][] PULSES = {
    {12, 0.3, 1}, {12, 2.3, 0.5}, {12, 0.3, 1}, {12, 3, 0.5}, {12, 0.3, 1}
  };

  private static final double[][] START = {
    {12.6, 0, 1}, {12.6, 1, 1}, {12.6, 2, 1}, {8, 2, 0.5}, {8.8, 2, 2.5}, {13.5, 0, 1}
  };

  @ParameterizedTest
  @CsvSource({
    "PULSES, WEAK_POWER_STAGE, 0.7, FAIL, POWER_STAGE_WEAK",
    "PULSES, SLOW_START, 0, PASS, ", // of no consequence after the start
    "START, FEEDBACK_LOW, 0.5, FAIL, FEEDBACK",
    "START, CAPACITANCE_LOST, 0.9, FAIL, OUTPUT_CAPACITANCE",
    "START, LOCK_OUT_HIGH, 0.5, FAIL, LOCK_OUT",
    "START, SLOW_START, 0, PASS, ",
  })
  void theGroupIsTheOneThatWasMadeFaulty(
      String shape, UnitFault fault, double severity, String verdict, String group) {
    Catalogue catalogue = Catalogue.ofHome();
    Family family = catalogue.family("ref48");
    boolean start = shape.equals("START");
    Profile profile = catalogue.profile(start ? "ref48-crank" : "ref48-steady");
    UnitParameters unit = fault.in(UnitParameters.healthy("ref48"), severity);
    if (fault == UnitFault.LOCK_OUT_HIGH) { // this circuit's own is far below any start
      unit = unit.with(Parameter.LOCK_OUT_OFF, 8.5).with(Parameter.LOCK_OUT_ON, 9);
    }
    MeasuredRun run =
        RunMeter.read(
            capture(unit, start ? START : PULSES),
            new MeterSettings(
                profile.settle_s(), profile.guard_s(), Optional.of(family.output_V()), Map.of()));
    Judgement judgement = Judge.judge(run, family, profile, RunEnd.completed(0));
    Diagnosis diagnosis = Diagnostician.diagnose(run, family, profile, judgement);
    assertEquals(Optional.of(verdict), judgement.verdict().map(Enum::name));
    assertEquals(
        Optional.ofNullable(group),
        diagnosis.named().map(Candidate::group),
        diagnosis.candidates().toString());
  }

  private static Capture capture(UnitParameters unit, double[][] steps) {
    Circuit circuit = new Circuit(unit, Supply.battery());
    circuit.charge(steps[0][0], unit.get(Parameter.NOMINAL));
    circuit.source(steps[0][0], 1000);
    circuit.relay(true);
    circuit.sourceOutput(true);
    circuit.pass(0.3);
    double all_s = 0;
    for (double[] step : steps) {
      all_s += step[2];
    }
    int[][] codes = new int[3][(int) Math.round(all_s * RATE_HZ)];
    int at = 0;
    for (double[] step : steps) {
      circuit.source(step[0], 1000);
      circuit.load(step[1]);
      for (int i = 0; i < Math.round(step[2] * RATE_HZ); i++, at++) {
        circuit.pass(1.0 / RATE_HZ);
        codes[0][at] = (int) Math.rint(circuit.input_V() / LSB);
        codes[1][at] = (int) Math.rint(circuit.output_V() / LSB);
        codes[2][at] = (int) Math.rint(circuit.load_A() / LSB);
      }
    }
    return new Capture(
        RATE_HZ,
        Waveform.ofOwnCodes(codes[1], LSB, 0, Unit.VOLT),
        Optional.of(Waveform.ofOwnCodes(codes[2], LSB, 0, Unit.AMPERE)),
        List.of(new Capture.Feed("input", Waveform.ofOwnCodes(codes[0], LSB, 0, Unit.VOLT))),
        Optional.empty(),
        List.of());
  }
}
