package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.bench.record.RunEnd;
import corewright.measures.Reading;
import corewright.profiles.Step;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever goes wrong in a step that is no hold, the unit is left without feed and charge. */
class StepsEndSafeTest {
  @TempDir Path folder;
  private final FakeBench bench = new FakeBench();

  static Stream<Step> steps() {
    return StepsOfTheTradeTest.EVERY.stream().filter(s -> s.kind() != Step.Kind.HOLD);
  }

  /** Runs this step and the holds; something happens once it has gone on for a while. */
  private RunResult run(Step in, Consumer<Stop> happens) {
    return run(
        in,
        StepsOfTheTradeTest.EVERY.stream()
            .filter(s -> s.equals(in) || s.kind() == Step.Kind.HOLD)
            .toList(),
        happens);
  }

  private RunResult run(Step in, List<Step> steps, Consumer<Stop> happens) {
    Stop stop = new Stop();
    RunListener listener =
        new RunListener() {
          private boolean there;
          private int frames;

          @Override
          public void step(Step step, int index, int count) {
            there = step.equals(in);
          }

          @Override
          public void frame(corewright.bench.port.Digitizer.Frame frame) {
            if (there && ++frames == 40) {
              happens.accept(stop);
            }
          }
        };
    return new RunEngine(bench.clock)
        .run(
            Plans.plan(folder, StepsOfTheTradeTest.profile(steps, 1000)),
            bench.instruments(),
            listener,
            stop);
  }

  private void isSafe(RunResult result) {
    assertEquals(List.of(), result.troubles());
    assertFalse(bench.unit.relayClosed, "relay");
    assertFalse(bench.unit.sourceOn, "source");
    assertFalse(bench.swinging, "its swing");
    assertFalse(bench.unit.loadOn, "load");
    assertTrue(bench.unit.discharging, "discharge");
    assertTrue(bench.unit.capacitor_V < 5, bench.unit.capacitor_V + " V");
  }

  @Test
  void theyAllRunToTheirEnd() {
    RunResult result = run(Plans.AWAY, StepsOfTheTradeTest.EVERY, stop -> {});
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    assertEquals(1000, result.capture().orElseThrow().size(), "the holds, and nothing else");
    isSafe(result);
  }

  @ParameterizedTest
  @MethodSource("steps")
  void anOutputTooHighEndsIt(Step step) {
    RunResult result = run(step, stop -> bench.unit.regulates_V = 70);
    if (step.kind() == Step.Kind.START && result.end().kind() == RunEnd.Kind.COMPLETED) {
      return; // the frame was one of the fall before the start
    }
    assertEquals(RunEnd.Trip.OUTPUT_OVER, result.end().trip(), result.end().saw());
    assertEquals(step.id(), result.end().step());
    isSafe(result);
    step.yields()
        .forEach(
            q ->
                assertEquals(
                    Reading.none("the run ended before this step was over."),
                    result.beside().readings().get(q)));
  }

  @ParameterizedTest
  @MethodSource("steps")
  void anOpenChainEndsIt(Step step) {
    RunResult result = run(step, stop -> bench.unit.chainWhole = false);
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind(), result.end().saw());
    assertEquals(step.id(), result.end().step());
    isSafe(result);
  }

  @ParameterizedTest
  @MethodSource("steps")
  void aPersonEndsIt(Step step) {
    RunResult result = run(step, stop -> stop.request("Enough."));
    assertEquals(RunEnd.Kind.STOPPED, result.end().kind());
    assertEquals(step.id(), result.end().step());
    isSafe(result);
  }

  @ParameterizedTest
  @MethodSource("steps")
  void aSourceThatSaysNothingEndsIt(Step step) {
    bench.before =
        command -> {
          if (command.equals("source set") && fails) {
            throw new InstrumentFault("source", "set", "it does not answer", "Check its cable.");
          }
        };
    RunResult result = run(step, stop -> fails = true);
    if (result.end().kind() != RunEnd.Kind.COMPLETED) {
      assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind(), result.end().saw());
    }
    isSafe(result);
  }

  private boolean fails;

  /** A discharge path that is broken is found before the unit is started from what it still has. */
  @Test
  void aUnitThatCannotBeRunDownIsNotStarted() {
    RunListener breaks =
        new RunListener() {
          @Override
          public void step(Step step, int index, int count) {
            bench.unit.dischargeBroken = step.kind() == Step.Kind.START;
          }
        };
    RunResult result =
        new RunEngine(bench.clock)
            .run(
                Plans.plan(folder, StepsOfTheTradeTest.profile(StepsOfTheTradeTest.EVERY, 1000)),
                bench.instruments(),
                breaks,
                new Stop());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().startsWith("The output still holds"), result.end().saw());
    assertEquals(1, bench.told.stream().filter("source output true"::equals).count());
  }
}
