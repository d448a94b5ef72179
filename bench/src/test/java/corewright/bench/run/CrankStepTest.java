package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer;
import corewright.bench.record.RunEnd;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Step;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a cranking tells load and source, and what it says where they cannot do it. */
class CrankStepTest {
  @TempDir Path folder;
  private final FakeBench bench = new FakeBench();

  CrankStepTest() {
    bench.hasMeter = false; // which would have something to note
  }

  private static final Step CRANK =
      StepsOfTheTradeTest.loaded(Step.Kind.CRANK, 0, StepsOfTheTradeTest.crank(10.35));

  private RunResult run(RunListener listener) {
    return new RunEngine(bench.clock)
        .run(
            Plans.plan(
                folder, StepsOfTheTradeTest.profile(List.of(CRANK, Plans.REST, Plans.FULL), 1000)),
            bench.instruments(),
            listener,
            new Stop());
  }

  /** Three repeats: swing and events in each, both taken back, no load while it rests. */
  @Test
  void eachRepeatSwingsAndPulsesAndRestsWithoutLoad() {
    RunResult result = run(new RunListener() {});
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    List<String> told =
        bench.told.stream()
            .filter(t -> t.matches("(source (swing|steady)|load|digitizer start).*"))
            .toList();
    List<String> once =
        List.of(
            "load set 1.0",
            "load input true",
            "source swing 0.4",
            "load pulse 10.0",
            "source steady",
            "load input false",
            "load steady");
    int begins = told.indexOf(once.get(0));
    assertEquals(once, told.subList(begins, begins + 7));
    assertEquals(
        List.of("digitizer start 1000", "digitizer start 100000"),
        told.subList(begins + 7, begins + 9),
        "at rest a thousand samples a second will do");
    assertEquals(once, told.subList(begins + 9, begins + 16));
    assertEquals(3, told.stream().filter("load pulse 10.0"::equals).count());
    assertEquals(List.of(), result.beside().notes());
  }

  /** 0.04 s of them the input is at its lowest, the rest at the plateau. */
  @Test
  void eventsBeginATenthOfASecondAfterTheInputHasFallen() {
    List<Long> set = new ArrayList<>();
    List<Long> pulsed = new ArrayList<>();
    bench.before =
        told -> {
          if (told.equals("source set") && pulsed.isEmpty()) {
            set.add(bench.clock.nanos());
          } else if (told.startsWith("load pulse")) {
            pulsed.add(bench.clock.nanos());
          }
        };
    run(new RunListener() {});
    double plateau_s = (pulsed.get(0) - set.get(set.size() - 1)) / 1e9 / bench.slowness;
    double lowest_s = (pulsed.get(0) - set.get(set.size() - 2)) / 1e9 / bench.slowness;
    assertEquals(0.06, plateau_s, 0.006, "s, to a frame");
    assertEquals(0.1, lowest_s, 0.006, "s, to a frame");
  }

  /** A plain load and a plain source: the rest is done, and every reading says what was not. */
  @Test
  void aPlainBenchCranksWithoutAndSaysSo() {
    bench.pulses = false;
    bench.swings = false;
    RunResult result = run(new RunListener() {});
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    List<String> lacks =
        List.of(
            "Without events: the load of this bench does not pulse by itself.",
            "Without the starter's swing: the source of this bench only stands at its level.");
    for (Quantity quantity : Step.Kind.CRANK.yields()) {
      assertEquals(lacks, ((Reading.Measured) result.beside().readings().get(quantity)).flags());
    }
    assertEquals(
        lacks.stream().map(l -> "Done in part: CRANK. " + l).toList(), result.beside().notes());
  }

  /** Whoever told the load to pulse and sees none is not told the unit's lowest by it. */
  @Test
  void aLoadThatDidNotTakeItsEventsIsTheLoadsDoing() {
    RunResult result = run(new RunListener() {}); // this load takes the mean of its pulses
    String lowest = result.beside().readings().get(Quantity.CRANK_LOWEST).toString();
    assertTrue(lowest.contains("look at the load"), lowest);
  }

  /** The chain opens while it rests: every frame of the rest is looked at too. */
  @Test
  void aFaultAtRestEndsItSafely() {
    RunResult result =
        run(
            new RunListener() {
              private int paces;

              @Override
              public void sampling(List<Digitizer.Channel> channels, double rate_Hz) {
                // the profile's own, the step's, then the rest
                if (rate_Hz == 1000 && ++paces == 2) {
                  bench.unit.chainWhole = false;
                }
              }
            });
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind(), result.end().saw());
    assertEquals(CRANK.id(), result.end().step());
    assertEquals(List.of(), result.troubles());
    assertFalse(bench.unit.sourceOn || bench.unit.loadOn || bench.swinging);
    assertTrue(bench.unit.discharging);
  }

  /** In the moment of the fault the source swings and the load pulses; off ends both. */
  @Test
  void aFaultWhileBothMoveEndsBoth() {
    bench.before = t -> bench.unit.chainWhole &= !t.startsWith("load pulse");
    RunResult result = run(new RunListener() {});
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind(), result.end().saw());
    assertTrue(bench.told.contains("source swing 0.4"));
    assertFalse(bench.told.contains("source steady"), "off does it");
    assertFalse(bench.unit.sourceOn || bench.unit.loadOn || bench.swinging);
  }
}
