package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunEnd;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.Circuit;
import corewright.fixtures.emulate.unit.Oracle;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.Supply;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Profile;
import corewright.profiles.SlowPulses;
import corewright.profiles.Step;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps that are no holds, on emulated units over pseudo-terminals. */
class StepsOfTheTradeTest {
  @TempDir Path folder;

  static Step step(Step.Kind kind, double input_V, double hold_s, Step.Detail detail) {
    return new Step(
        kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
        kind,
        kind.name(),
        input_V,
        16,
        0,
        hold_s,
        false,
        detail);
  }

  static Step.Detail at(double rate_Hz) {
    return new Step.Detail(Optional.of(rate_Hz), 0, 0, List.of(), 1);
  }

  private static final Step.Detail LINES =
      new Step.Detail(
          Optional.of(10e3),
          0,
          0,
          List.of(
              new Step.Level(9, 0.3, true),
              new Step.Level(12.5, 0.3, true),
              new Step.Level(15.8, 0.3, true)),
          1);

  private static final Step.Detail SURVIVAL =
      new Step.Detail(
          Optional.of(10e3),
          0,
          0,
          List.of(
              new Step.Level(12.5, 0.1, true),
              new Step.Level(6.5, 0.03, true),
              new Step.Level(8.0, 0.4, true),
              new Step.Level(12.5, 0.3, true)),
          1);

  private static final Step.Detail CRANK = crank(10.35);

  static Step.Detail crank(double plateau_V) {
    return new Step.Detail(
        Optional.of(100e3),
        0,
        0,
        List.of(
            new Step.Level(12.5, 0.05, false),
            new Step.Level(9.5, 0.04, false),
            new Step.Level(plateau_V, 1.1, true, Optional.of(new Step.Swing(0.4, 13))),
            new Step.Level(13.8, 0.1, false)),
        3,
        Optional.empty(),
        true,
        Optional.of(new Step.Pulses(10, 0.4e-3, 27)),
        0.3);
  }

  /** 4 mC in 0.4 ms, 440 a second: the events of a solenoid driver at its rated rate. */
  private static final Step PULSES =
      step(
          Step.Kind.PULSES,
          12.5,
          0.25,
          new Step.Detail(
              Optional.of(500e3),
              0,
              0,
              List.of(),
              1,
              Optional.empty(),
              true,
              Optional.of(
                  new Step.Pulses(
                      10,
                      0.4e-3,
                      440,
                      List.of(
                          new Step.Slower(SlowPulses.CRANKING, 27, 0.3),
                          new Step.Slower(SlowPulses.IDLE, 93, 0.2))))));

  static Step loaded(Step.Kind kind, double hold_s, Step.Detail detail) {
    Step s = step(kind, 12.5, hold_s, detail);
    return new Step(s.id(), kind, s.title(), 12.5, 16, 1, hold_s, false, detail);
  }

  private static final Step BURST = loaded(Step.Kind.BURST, 0.02, at(1.5e6));

  private static final Step FALLING = falling(10.5, 9.2, 1);

  /** The input falls at so many V/s while 1 A is taken. */
  static Step falling(double from_V, double to_V, double ramp_VperS) {
    Step.Detail ramp = new Step.Detail(Optional.of(50e3), to_V, ramp_VperS, List.of(), 1);
    return new Step("falling", Step.Kind.FALLING, "FALLING", from_V, 16, 1, 0, false, ramp);
  }

  /** Steps that not every bench can do. */
  static final List<Step> FAST = List.of(Plans.REST, Plans.FULL, PULSES, BURST);

  static final List<Step> EVERY =
      List.of(
          step(Step.Kind.START, 12.5, 0.6, at(100e3)),
          step(Step.Kind.QUIESCENT, 12.5, 0.4, at(10e3)),
          step(Step.Kind.LINES, 0, 0, LINES),
          step(Step.Kind.LOCK_OUT, 10, 0, new Step.Detail(Optional.of(10e3), 6, 1, List.of(), 1)),
          Plans.REST,
          Plans.FULL,
          FALLING,
          step(Step.Kind.HIGH_LINE, 15.8, 0.4, at(10e3)),
          loaded(Step.Kind.CRANK, 0, CRANK),
          step(Step.Kind.SURVIVAL, 0, 0, SURVIVAL),
          PULSES,
          BURST,
          loaded(Step.Kind.THERMAL, 1.5, at(10e3)),
          step(Step.Kind.DECAY, 12.5, 15, at(1e3)));

  static Profile profile(List<Step> steps, double rate_Hz) {
    return Plans.profile(
        "sd48",
        rate_Hz,
        Stream.of(List.of(Plans.DEAD, Plans.FIRST), steps, List.of(Plans.AWAY))
            .flatMap(List::stream)
            .toList());
  }

  private Map<Quantity, Reading> run(UnitParameters unit, List<Step> steps) throws IOException {
    try (OnPty bench = new OnPty(Setup.of(unit, 1));
        BenchInstruments instruments = bench.open()) {
      RunResult result = bench.run(instruments, folder, profile(steps, 20_000));
      assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
      assertEquals(20_000, result.capture().orElseThrow().size(), "the holds are whole");
      assertEquals(List.of(), result.capture().orElseThrow().gaps());
      return result.beside().readings();
    }
  }

  private static void within(double truth, Map<Quantity, Reading> read, Quantity quantity) {
    Measurement m = read.get(quantity).measurement().orElseThrow();
    // Gain and offset of this bench's channels are drawn: three standard uncertainties.
    assertEquals(truth, m.value(), m.expanded(3), quantity + " " + m);
  }

  /** What was read, against the circuit itself without noise, ripple or rounding. */
  @Test
  void everyReadingIsWhatTheCircuitDoes() throws IOException {
    UnitParameters unit = UnitParameters.healthy("sd48");
    Map<Quantity, Reading> read = run(unit, EVERY);
    within(unit.get(Parameter.LOCK_OUT_OFF), read, Quantity.LOCK_OUT_OFF);
    within(unit.get(Parameter.LOCK_OUT_ON), read, Quantity.LOCK_OUT_ON);
    within(0.8, read, Quantity.LOCK_OUT_HYSTERESIS);

    List<Double> levels = new ArrayList<>();
    for (double line_V : List.of(9.0, 12.5, 15.8)) {
      levels.add(truth(unit, line_V).output_V());
    }
    within(Collections.min(levels), read, Quantity.LINE_LOWEST);
    within(Collections.max(levels), read, Quantity.LINE_HIGHEST);
    within(truth(unit, 15.8).output_V(), read, Quantity.HIGH_LINE_OUTPUT);
    within(truth(unit, 15.8).output_V(), read, Quantity.HIGH_LINE_LOWEST);
    within(truth(unit, 12.5).inputCurrent_A(), read, Quantity.NO_LOAD_CURRENT);

    pulsed(unit, read);

    Oracle.Truth fallen = truth(unit, 9.2, 1);
    within(fallen.output_V(), read, Quantity.FALLING_LOWEST);
    String held = ((Reading.NotMeasured) read.get(Quantity.HOLDS_TO)).reason();
    String to = String.format(java.util.Locale.ROOT, "the input down to %.1f", fallen.input_V());
    assertTrue(held.contains("held all the way, with " + to), held);

    Cranked cranked = cranked(unit);
    within(cranked.output_V, read, Quantity.CRANK_OUTPUT);
    assertEquals(
        cranked.lowest_V,
        read.get(Quantity.CRANK_LOWEST).measurement().orElseThrow().value(),
        0.1,
        "V: with its ripple, a dip may lie a little deeper");
    assertEquals(
        cranked.inputLowest_V,
        read.get(Quantity.CRANK_INPUT).measurement().orElseThrow().value(),
        0.04,
        "V: the lowest of many medians over the ripple lies below the mean");
    assertEquals(
        0, read.get(Quantity.CRANK_SPREAD).measurement().orElseThrow().value(), 0.005, "V");
    assertEquals(
        0, read.get(Quantity.CRANK_DRIFT).measurement().orElseThrow().value(), 0.5, "V/min");
    survived(unit, read);
    // The bleeder alone: R·C·ln 2, and the charge that the input's capacitor still gives.
    double bleeder_s = unit.get(Parameter.BLEED) * unit.get(Parameter.CAPACITANCE) * Math.log(2);
    assertEquals(
        bleeder_s, read.get(Quantity.DECAY_HALF).measurement().orElseThrow().value(), 0.1, "s");

    Started started = started(unit);
    within(started.rise_s, read, Quantity.START_RISE);
    within(started.overshoot_V, read, Quantity.START_OVERSHOOT);
    within(started.squares, read, Quantity.INRUSH_I2T);
    within(started.peak_A, read, Quantity.INRUSH);
  }

  /** The parts of the unit; a pulse takes its charge, and the converter's limit gives some back. */
  private static void pulsed(UnitParameters unit, Map<Quantity, Reading> read) {
    double c_F = unit.get(Parameter.CAPACITANCE);
    double r_ohm = unit.get(Parameter.ESR) + unit.get(Parameter.LEAD);
    within(1 / 0.002273, read, Quantity.PULSED_RATE); // the load counts whole microseconds
    within(c_F, read, Quantity.PULSED_CAPACITANCE);
    within(r_ohm, read, Quantity.PULSED_ESR);
    double all_V = 10 * 0.4e-3 / c_F + 10 * r_ohm;
    double given_V = 2.8 * 0.4e-3 / c_F;
    double dip_V = read.get(Quantity.PULSED_DIP).measurement().orElseThrow().value();
    assertTrue(dip_V < all_V && dip_V > all_V - given_V - 0.1, dip_V + " V of " + all_V);
    // No more than its limit lets through: input power, at the output's voltage.
    double most_V = unit.get(Parameter.CURRENT_LIMIT) * 12.5 / 48 * 0.4e-3 / c_F;
    for (SlowPulses rate : SlowPulses.values()) {
      // The same charge out of the same capacitor, which is full again long before the next.
      double slow_V = read.get(rate.dip()).measurement().orElseThrow().value();
      assertTrue(slow_V < all_V && slow_V > all_V - most_V, rate + " " + slow_V);
      double mean_V = read.get(rate.output()).measurement().orElseThrow().value();
      assertEquals(truth(unit, 12.5).output_V(), mean_V, 0.2, rate + " V");
    }
    // One switching period, seen without folding.
    within(1 / unit.get(Parameter.PERIOD), read, Quantity.BURST_FUNDAMENTAL);
  }

  /** Another soft start, another lock-out, other capacitors are read where they are. */
  @Test
  void aUnitThatDiffersReadsDifferently() throws IOException {
    UnitParameters unit =
        UnitParameters.healthy("sd48")
            .times(Parameter.SOFT_START, 0.5)
            .times(Parameter.CAPACITANCE, 0.5)
            .times(Parameter.ESR, 3)
            .with(Parameter.LOCK_OUT_OFF, 7.1)
            .with(Parameter.LOCK_OUT_ON, 8.9);
    Map<Quantity, Reading> read =
        run(unit, List.of(EVERY.get(0), EVERY.get(3), Plans.REST, Plans.FULL, PULSES, BURST));
    pulsed(unit, read);
    within(7.1, read, Quantity.LOCK_OUT_OFF);
    within(8.9, read, Quantity.LOCK_OUT_ON);
    within(1.8, read, Quantity.LOCK_OUT_HYSTERESIS);
    within(started(unit).rise_s, read, Quantity.START_RISE);
  }

  /** Where the converter runs out of input, and where it stops itself, under 1 A. */
  @ParameterizedTest
  @CsvSource({"0.53, 7.6, 10.1, 9.3", "1, 9.8, 9.9, 9.7"})
  void theInputDownToWhichItHoldsIsTheCircuits(
      double limit, double off_V, double most_V, double least_V) throws IOException {
    UnitParameters unit =
        UnitParameters.healthy("sd48")
            .times(Parameter.CURRENT_LIMIT, limit)
            .with(Parameter.LOCK_OUT_OFF, off_V)
            .with(Parameter.LOCK_OUT_ON, off_V + 0.3);
    Map<Quantity, Reading> read = run(unit, List.of(Plans.REST, Plans.FULL, FALLING));
    double truth_V = letsGo(unit);
    assertTrue(truth_V < most_V && truth_V > least_V, truth_V + " V");
    within(truth_V, read, Quantity.HOLDS_TO);
    double lowest_V = read.get(Quantity.FALLING_LOWEST).measurement().orElseThrow().value();
    assertTrue(lowest_V < 0.99 * 48 && lowest_V > 30, lowest_V + " V: it turned back in time");
  }

  /** The circuit itself through the same ramp; the input where the output has lost 1 %. */
  private static double letsGo(UnitParameters unit) {
    Circuit circuit = new Circuit(unit, Supply.stiff());
    circuit.source(10.5, 16);
    circuit.relay(true);
    circuit.sourceOutput(true);
    circuit.pass(0.5);
    double level_V = circuit.output_V();
    circuit.load(1);
    circuit.pass(0.5);
    double source_V = 10.5;
    double output_V = level_V;
    while (output_V >= 0.99 * level_V && source_V > 9.2) {
      source_V -= 0.001;
      circuit.source(source_V, 16);
      circuit.pass(0.001);
      output_V = circuit.output_V();
    }
    return circuit.input_V();
  }

  private static Oracle.Truth truth(UnitParameters unit, double line_V) {
    return truth(unit, line_V, 0);
  }

  private static Oracle.Truth truth(UnitParameters unit, double line_V, double load_A) {
    return new Oracle(unit, Supply.stiff(), line_V, 16)
        .play(List.of(new Oracle.Hold(line_V, 16, load_A, 0.3)), 0.15, 0)
        .get(0);
  }

  /** Turned off by 6.5 V, and at 8.0 V still below where it turns on again. */
  private static void survived(UnitParameters unit, Map<Quantity, Reading> read) {
    Circuit circuit = new Circuit(unit, Supply.stiff());
    circuit.source(12.5, 16);
    circuit.relay(true);
    circuit.sourceOutput(true);
    circuit.pass(0.5);
    double band_V = 0.99 * circuit.output_V();
    double lowest_V = band_V;
    double out_s = 0;
    double back_s = 0;
    for (double[] level : new double[][] {{6.5, 0.03}, {8.0, 0.4}, {12.5, 0.3}}) {
      circuit.source(level[0], 16);
      for (double t = 0; t < level[1]; t += 1e-4) {
        circuit.pass(1e-4);
        lowest_V = Math.min(lowest_V, circuit.output_V());
        boolean outside = circuit.output_V() < band_V;
        out_s += outside ? 1e-4 : 0;
        back_s = outside && level[0] == 12.5 ? t : back_s;
      }
    }
    assertTrue(out_s > 0.2 && lowest_V < band_V - 0.5, out_s + " s, " + lowest_V + " V");
    within(lowest_V, read, Quantity.SURVIVAL_LOWEST);
    double readOut_s = read.get(Quantity.SURVIVAL_OUT).measurement().orElseThrow().value();
    assertEquals(out_s, readOut_s, 0.01, "s: 1 % of the output is 0.14 s of its fall");
    double readBack_s = read.get(Quantity.SURVIVAL_BACK).measurement().orElseThrow().value();
    assertEquals(back_s, readBack_s, 0.004, "s: a command takes its millisecond");
  }

  /** The plateau of a cranking with its events and the starter's strokes, step by step. */
  private record Cranked(double output_V, double lowest_V, double inputLowest_V) {}

  private static Cranked cranked(UnitParameters unit) {
    Circuit circuit = new Circuit(unit, Supply.stiff());
    circuit.source(12.5, 16);
    circuit.relay(true);
    circuit.sourceOutput(true);
    circuit.pass(0.5);
    circuit.load(1);
    circuit.source(10.35, 16);
    circuit.swing(0.4, 13);
    circuit.pulses(9, 0.4e-3, 1 / 27.0);
    circuit.pass(0.15);
    int n = (int) Math.round(0.95 / 2e-6);
    double[] output = new double[n];
    double[] input = new double[n];
    for (int i = 0; i < n; i++) {
      circuit.pass(2e-6);
      output[i] = circuit.output_V();
      input[i] = circuit.input_V();
    }
    // means of an eighth of an event, and of the millisecond that the input is looked at in
    return new Cranked(
        java.util.Arrays.stream(output).average().orElseThrow(),
        lowest(output, 25),
        lowest(input, 500));
  }

  private static double lowest(double[] of, int length) {
    double sum = 0;
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < of.length; i++) {
      sum += of[i] - (i >= length ? of[i - length] : 0);
      lowest = i >= length - 1 ? Math.min(lowest, sum / length) : lowest;
    }
    return lowest;
  }

  /** The start of a unit that has been run down, followed step by step. */
  private record Started(double rise_s, double overshoot_V, double peak_A, double squares) {}

  private static Started started(UnitParameters unit) {
    double step_s = 2e-6;
    Circuit circuit = new Circuit(unit, Supply.stiff());
    circuit.source(12.5, 16);
    circuit.relay(true);
    circuit.sourceOutput(true);
    circuit.pass(0.5);
    circuit.sourceOutput(false);
    circuit.discharge(1.0 / 470);
    while (circuit.output_V() >= Plans.SD48.discharge().safe_V()) {
      circuit.pass(0.001);
    }
    circuit.discharge(0);
    circuit.pass(0.05);
    circuit.sourceOutput(true);
    double from = circuit.output_V();
    int n = 300_000;
    double[] out = new double[n];
    double[] in = new double[n];
    double peak = 0;
    for (int i = 0; i < n; i++) {
      circuit.pass(step_s);
      out[i] = circuit.output_V();
      in[i] = circuit.source_A();
      peak = Math.max(peak, in[i]);
    }
    double level = out[n - 1];
    int tenth = 0;
    int ninety = 0;
    int up = 0;
    double highest = 0;
    for (int i = n - 1; i >= 0; i--) {
      tenth = out[i] > from + 0.1 * (level - from) ? i : tenth;
      ninety = out[i] > from + 0.9 * (level - from) ? i : ninety;
      up = out[i] > 0.95 * level ? i : up;
      highest = Math.max(highest, out[i]);
    }
    double rise_s = (ninety - tenth) * step_s;
    double squares = 0;
    for (int i = 0; i < up + 3 * rise_s / step_s; i++) {
      squares += in[i] * in[i] * step_s;
    }
    return new Started(rise_s, highest - level, peak, squares);
  }
}
