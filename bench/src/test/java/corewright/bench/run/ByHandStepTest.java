package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.bench.judge.Judge;
import corewright.bench.record.HandReading;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the bench cannot do is entered with name and instrument, or stands as not measured. */
class ByHandStepTest {
  @TempDir Path folder;
  private final FakeBench bench = new FakeBench();

  static Step step(boolean needed) {
    return new Step(
        "key-off",
        Step.Kind.BY_HAND,
        "Input current, not enabled",
        0,
        0,
        0,
        0,
        false,
        new Step.Detail(
            Optional.empty(),
            0,
            0,
            List.of(),
            1,
            Optional.of(Quantity.KEY_OFF_CURRENT),
            needed,
            Optional.empty()));
  }

  private static Profile profile(boolean needed) {
    Profile p =
        Plans.profile(Plans.DEAD, Plans.FIRST, step(needed), Plans.REST, Plans.FULL, Plans.AWAY);
    return new Profile(
        p.id(),
        p.revision(),
        p.family(),
        p.title(),
        p.purpose(),
        p.sampleRate_Hz(),
        Optional.of(0.1),
        Optional.of(0.01),
        p.feeds(),
        p.supplyDrops(),
        p.provingLoad_A(),
        p.steps(),
        List.of(
            new Limit("full", Quantity.OUTPUT, Limit.Side.AT_LEAST, 46.5, 45, 1.9, 3, true, "test"),
            new Limit(
                "key-off",
                Quantity.KEY_OFF_CURRENT,
                Limit.Side.AT_MOST,
                0.003,
                0.003,
                0,
                9,
                false,
                "test")),
        p.temperature_C(),
        p.temperatureTolerance_K(),
        p.origin());
  }

  private RunResult run(Profile profile, Map<String, HandReading> byHand) {
    RunPlan plan =
        new RunPlan(
            "run-1",
            "CW-1",
            Plans.SD48,
            profile,
            Plans.bench(),
            "Ada",
            folder,
            Plans.confirmed(),
            byHand);
    RunResult result =
        new RunEngine(bench.clock).run(plan, bench.instruments(), RunListener.NONE, new Stop());
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    return result;
  }

  private Judgement judged(Profile profile, RunResult result) {
    return Judge.judge(
        result
            .beside()
            .with(RunMeter.read(result.capture().orElseThrow(), MeterSettings.defaults())),
        Plans.SD48,
        profile,
        result.end());
  }

  /** Entered: as any reading. Not entered: only where the profile says that it may be left open. */
  @ParameterizedTest
  @CsvSource({
    "true, 0.001, PASS",
    "true, 0.004, FAIL",
    "true, , INCOMPLETE",
    "false, 0.001, PASS",
    "false, 0.004, FAIL",
    "false, , PASS"
  })
  void whatIsNeededAndMissingNeverPasses(boolean needed, Double value_A, Verdict verdict) {
    Map<String, HandReading> byHand =
        value_A == null
            ? Map.of()
            : Map.of(
                "key-off",
                new HandReading(
                    new Measurement(value_A, 0.0001, Unit.AMPERE), "Grace", "multimeter 4"));
    Profile profile = profile(needed);
    RunResult result = run(profile, byHand);
    Judgement judged = judged(profile, result);
    assertEquals(Optional.of(verdict), judged.verdict(), judged.reasons().toString());
    Reading reading = result.beside().readings().get(Quantity.KEY_OFF_CURRENT);
    if (value_A == null) {
      assertEquals(Reading.none("this bench cannot do it, and nobody entered it."), reading);
    } else {
      assertEquals(
          List.of("Entered by hand by Grace, read with multimeter 4."),
          ((Reading.Measured) reading).flags());
    }
    assertEquals(
        value_A == null,
        result
            .beside()
            .notes()
            .contains(
                "Not measured: Input current, not enabled. This bench cannot do it, and nobody"
                    + " entered it."),
        "never left out in silence: " + result.beside().notes());
  }

  /** A load without pulses and a digitizer that is too slow: each says so, and a person may. */
  @ParameterizedTest
  @CsvSource({
    "true, 2147483647, true, '', ''",
    "false, 2147483647, false, the load of this bench does not pulse by itself, ''",
    "false, 2147483647, true, '', ''",
    "true, 500000, false, '', the digitizer of this bench or its line does not take 1500000 samples"
        + " a second"
  })
  void aBenchThatCannotDoAStepSaysWhy(
      boolean load, int most_Hz, boolean entered, String pulses, String burst) {
    bench.pulses = load;
    bench.most_Hz = most_Hz;
    HandReading hand = new HandReading(new Measurement(1.9, 0.05, Unit.VOLT), "Grace", "scope 2");
    RunResult result =
        run(
            StepsOfTheTradeTest.profile(StepsOfTheTradeTest.FAST, 1000),
            entered ? Map.of("pulses", hand) : Map.of());
    said(pulses, "PULSES", Quantity.PULSED_DIP, result);
    said(burst, "BURST", Quantity.BURST_PEAK_TO_PEAK, result);
    assertEquals(
        entered && !load,
        result
            .beside()
            .readings()
            .get(Quantity.PULSED_DIP)
            .equals(new Reading.Measured(hand.value(), List.of(hand.sentence()))),
        "the bench's own reading goes first");
    assertEquals(
        entered && load,
        result
            .beside()
            .notes()
            .contains("Entered by hand and not used, because the bench did it: PULSES."));
  }

  /**
   * Of a step that need not be there a person enters one figure; the others are then not missing.
   */
  @ParameterizedTest
  @CsvSource({"1.9, PASS", "3.9, FAIL"})
  void oneFigureByHandAsksForNoOther(double dip_V, Verdict verdict) {
    bench.pulses = false;
    Step pulses = StepsOfTheTradeTest.FAST.get(2);
    Step.Detail d = pulses.detail();
    Step may =
        new Step(
            pulses.id(),
            pulses.kind(),
            pulses.title(),
            pulses.input_V(),
            pulses.inputLimit_A(),
            pulses.load_A(),
            pulses.hold_s(),
            false,
            new Step.Detail(
                d.sampleRate_Hz(), 0, 0, List.of(), 1, Optional.empty(), false, d.pulses()));
    Profile plain = profile(false);
    List<Limit> limits = new ArrayList<>(plain.limits());
    limits.add(atMost("dip", Quantity.PULSED_DIP, 3.2));
    limits.add(atMost("esr", Quantity.PULSED_ESR, 0.035));
    Profile profile =
        new Profile(
            plain.id(),
            plain.revision(),
            plain.family(),
            plain.title(),
            plain.purpose(),
            plain.sampleRate_Hz(),
            plain.settle_s(),
            plain.guard_s(),
            plain.feeds(),
            plain.supplyDrops(),
            plain.provingLoad_A(),
            List.of(Plans.DEAD, Plans.FIRST, step(false), Plans.REST, Plans.FULL, may, Plans.AWAY),
            limits,
            plain.temperature_C(),
            plain.temperatureTolerance_K(),
            plain.origin());
    Map<String, HandReading> byHand =
        Map.of(
            may.id(), new HandReading(new Measurement(dip_V, 0.05, Unit.VOLT), "Grace", "scope 2"));
    Judgement judged = judged(profile, run(profile, byHand));
    assertEquals(Optional.of(verdict), judged.verdict(), judged.reasons().toString());
  }

  private static Limit atMost(String id, Quantity quantity, double most) {
    return new Limit(id, quantity, Limit.Side.AT_MOST, most, most, 0, 9, false, "test");
  }

  private static void said(String why, String title, Quantity quantity, RunResult result) {
    boolean open =
        result.beside().notes().stream().anyMatch(n -> n.startsWith("Not measured: " + title));
    assertEquals(!why.isEmpty(), open, result.beside().notes().toString());
    if (open) {
      assertEquals(
          Reading.none(why + ", and nobody entered it."), result.beside().readings().get(quantity));
    }
  }

  @Test
  void aReadingWithoutNameOrInstrumentIsNone() {
    Measurement value = new Measurement(0.001, 0.0001, Unit.AMPERE);
    assertThrows(IllegalArgumentException.class, () -> new HandReading(value, " ", "meter"));
    assertThrows(IllegalArgumentException.class, () -> new HandReading(value, "Ada", ""));
  }
}
