package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.hand.HandLoad;
import corewright.bench.hand.Hands;
import corewright.bench.record.RunEnd;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Step;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person sets the load: what was asked for counts once it is measured. */
class HandLoadTest {
  @TempDir Path folder;
  private final FakeBench bench = new FakeBench();
  private final List<String> asked = new ArrayList<>();
  private double sets_A = 2;
  private int framesToGo = -1;

  private final Hands ada =
      new Hands() {
        @Override
        public String name() {
          return "Ada";
        }

        @Override
        public void please(String what) {
          asked.add(what);
          framesToGo = what.startsWith("Set") ? 400 : framesToGo; // two seconds to turn a knob
          if (what.startsWith("Switch")) {
            bench.unit.loadOn = false;
          }
        }
      };

  private RunResult run() {
    return run(Plans.plan(folder));
  }

  private RunResult run(RunPlan plan) {
    bench.frames =
        frame -> {
          if (framesToGo >= 0 && framesToGo-- == 0) {
            bench.unit.load_A = sets_A;
            bench.unit.loadOn = true;
          }
          return frame;
        };
    BenchInstruments fake = bench.instruments();
    BenchInstruments byHand =
        new BenchInstruments(
            new HandLoad(ada),
            fake.source(),
            fake.digitizer(),
            fake.relay(),
            fake.discharge(),
            fake.interlock(),
            fake.thermometer(),
            fake.meter());
    return new RunEngine(bench.clock).run(plan, byHand, RunListener.NONE, new Stop());
  }

  @Test
  void theHoldBeginsWhenTheMeasuredCurrentIsThereAndTheRecordSaysWho() {
    RunResult result = run();
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    assertEquals("Set the load to 2.00 A and switch it on.", asked.get(0));
    assertTrue(asked.contains("Switch the load off."), asked.toString());
    assertEquals("BY HAND,Ada,0,0", result.equipment().get(0).identity());
    MeasuredRun measured =
        RunMeter.read(
            result.capture().orElseThrow(),
            new MeterSettings(Optional.empty(), Optional.empty(), Optional.of(48.0), Map.of()));
    assertEquals(2, measured.holds().size());
    double full_s = measured.holds().get(1).end_s() - measured.holds().get(1).start_s();
    assertEquals(0.6 + 0.3, full_s, 0.02, "the hold, after the current had stayed for 0.3 s");
    assertEquals(2, measured.holds().get(1).value(Quantity.LOAD).orElseThrow().value(), 0.01);
  }

  /** Once before each cranking: nobody has a hand free while the input falls for 40 ms. */
  @Test
  void whoeverCranksWithAHandSetsTheLoadBeforeEach() {
    sets_A = 1;
    Step crank = StepsOfTheTradeTest.loaded(Step.Kind.CRANK, 0, StepsOfTheTradeTest.crank(10.35));
    Step held = Plans.hold("held", 12.5, 1, 0.6);
    RunResult result =
        run(
            Plans.plan(
                folder, StepsOfTheTradeTest.profile(List.of(crank, Plans.REST, held), 1000)));
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    assertEquals(
        List.of("Set the load to 1.00 A and switch it on.", "Switch the load off."),
        asked.subList(0, 2));
    assertEquals(4, asked.stream().filter(a -> a.startsWith("Set")).count(), "three, and the hold");
    Reading.Measured output =
        (Reading.Measured) result.beside().readings().get(Quantity.CRANK_OUTPUT);
    assertTrue(output.flags().contains(CrankStep.NO_EVENTS), output.toString());
  }

  @Test
  void aLoadThatIsNotSetEndsTheRunSafelyAndSaysWhatWasRead() {
    sets_A = 1.8;
    RunResult result = run();
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertEquals(
        "The load was to be set to 2.00 A by hand, and reads 1.80 A after 120 s.",
        result.end().saw());
    assertFalse(bench.unit.sourceOn);
    assertTrue(bench.unit.capacitor_V < 5);
  }
}
