package corewright.station.demo;

import corewright.bench.judge.Judge;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.unit.Oracle;
import corewright.fixtures.emulate.unit.Oracle.Truth;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.station.demo.DemoCore.OnTheBench;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The verdict that the noise-free physics asks for: the circuit itself is asked, without noise,
 * ripple sampling, ports, engine or meter, and what it says is held against the profile's limits.
 */
final class Physics {
  private static final double EXACT = 1e-9;

  private Physics() {}

  static Verdict verdict(OnTheBench unit, Family family, Profile profile) {
    Step first =
        profile.steps().stream()
            .filter(s -> s.kind() == Step.Kind.FIRST_POWER)
            .findFirst()
            .orElseThrow();
    // A short draws the whole limit long before the nominal input is reached.
    if (unit.unit().get(Parameter.LEAKAGE) * first.input_V() > first.inputLimit_A()) {
      return Verdict.UNSAFE;
    }
    List<Step> holds = profile.steps().stream().filter(s -> s.kind() == Step.Kind.HOLD).toList();
    Oracle oracle =
        new Oracle(unit.unit(), unit.supply(), holds.get(0).input_V(), holds.get(0).inputLimit_A());
    List<Truth> truths =
        oracle.play(
            holds.stream()
                .map(s -> new Oracle.Hold(s.input_V(), s.inputLimit_A(), s.load_A(), s.hold_s()))
                .toList(),
            profile.settle_s().orElseThrow(),
            profile.guard_s().orElseThrow());
    return Judge.judge(run(holds, truths), family, profile, RunEnd.completed(1))
        .verdict()
        .orElseThrow();
  }

  private static MeasuredRun run(List<Step> steps, List<Truth> truths) {
    List<MeasuredHold> holds = new ArrayList<>();
    double start = 0;
    double rest = truths.get(0).output_V();
    for (int i = 0; i < truths.size(); i++) {
      Truth t = truths.get(i);
      if (steps.get(i).load_A() == 0) {
        rest = t.output_V();
      }
      double end = start + steps.get(i).hold_s();
      holds.add(
          new MeasuredHold(
              i, start, end, start, end, readings(t, rest), List.of(feed(t)), "recovered"));
      start = end;
    }
    return new MeasuredRun(1e6, 1, "physics", holds, Map.of(), List.of());
  }

  private static FeedReadings feed(Truth t) {
    return new FeedReadings(
        "input",
        Reading.of(t.input_V(), EXACT, Quantity.INPUT.unit()),
        Reading.of(t.inputLowest_V(), EXACT, Quantity.INPUT.unit()),
        Reading.of(t.inputLowest_V(), EXACT, Quantity.INPUT.unit()));
  }

  private static Map<Quantity, Reading> readings(Truth t, double rest_V) {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    put(readings, Quantity.LOAD, t.load_A());
    put(readings, Quantity.OUTPUT, t.output_V());
    put(readings, Quantity.DROOP, rest_V - t.output_V());
    put(readings, Quantity.LOAD_REGULATION, 100 * (rest_V - t.output_V()) / t.output_V());
    put(readings, Quantity.RIPPLE_PEAK_TO_PEAK, t.ripple_V());
    put(readings, Quantity.UNDERSHOOT, t.undershoot_V());
    put(readings, Quantity.RECOVERY, t.recovery_s());
    put(readings, Quantity.DRIFT, t.drift_VperMin());
    put(readings, Quantity.INPUT, t.input_V());
    put(readings, Quantity.INPUT_MINIMUM, t.inputLowest_V());
    return readings;
  }

  private static void put(Map<Quantity, Reading> readings, Quantity quantity, double value) {
    readings.put(quantity, Reading.of(value, EXACT, quantity.unit()));
  }
}
