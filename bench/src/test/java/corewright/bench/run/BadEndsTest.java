package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.bench.record.RunEnd;
import corewright.profiles.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whatever ends a run, it says what it saw and leaves the bench safe. */
class BadEndsTest extends FakeRuns {

  @Test
  void aSourceThatWillNotSwitchOffIsNoticedAndTheRelayParts() {
    bench.unit.sourceSticks = true;
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().startsWith("The source is still on"), result.end().saw());
    isSafe();
  }

  @Test
  void aSourceThatCannotSayIsJudgedByItsVoltage() {
    bench.sourceSays = false;
    assertEquals(RunEnd.Kind.COMPLETED, run(Plans.plan(folder.resolve("good"))).end().kind());
    bench.unit.sourceSticks = true;
    assertTrue(run(Plans.plan(folder.resolve("stuck"))).end().saw().contains("at 12.50 ± 0.02 V"));
  }

  @Test
  void aPersonCanStopItAtAnyTime() {
    Stop stop = new Stop();
    RunListener presses =
        new RunListener() {
          @Override
          public void progress(double done_s, double total_s) {
            if (done_s > 4.6) {
              stop.request("The operator pressed Ctrl-C.");
            }
          }
        };
    RunResult result = run(Plans.plan(folder), presses, stop);
    assertEquals(RunEnd.Kind.STOPPED, result.end().kind());
    assertEquals("full", result.end().step());
    assertEquals("The operator pressed Ctrl-C.", result.end().saw());
    assertEquals(List.of(), result.troubles());
    assertTrue(result.capture().orElseThrow().size() < 1000);
    isSafe();
  }

  @Test
  void aMistakeOfTheStationItselfEndsSafeToo() {
    RunListener throwsUp =
        new RunListener() {
          @Override
          public void step(Step step, int index, int count) {
            if (step.id().equals("full")) {
              throw new IllegalStateException("a bug");
            }
          }
        };
    RunResult result = run(Plans.plan(folder), throwsUp, new Stop());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().contains("a bug"), result.end().saw());
    isSafe();
  }

  @Test
  void whoeverFollowsItMayFailAndTheDischargeIsProvedAllTheSame() {
    RunListener fails =
        new RunListener() {
          @Override
          public void safe(List<String> troubles) {
            throw new IllegalStateException("a screen is gone");
          }

          @Override
          public void ended(RunEnd end) {
            throw new IllegalStateException("a screen is gone");
          }
        };
    bench.unit.regulates_V = 60; // above the upper limit
    RunResult result = run(Plans.plan(folder), fails, new Stop());
    assertEquals(RunEnd.Kind.TRIPPED, result.end().kind(), result.end().saw());
    assertEquals(List.of(), result.troubles());
    isSafe();
  }

  @Test
  void evenWhenTheVirtualMachineGivesUpTheBenchIsSafe() {
    bench.before =
        command -> {
          if (command.equals("load input true")) {
            throw new OutOfMemoryError("made up");
          }
        };
    OutOfMemoryError thrown = assertThrows(OutOfMemoryError.class, () -> run(Plans.plan(folder)));
    assertEquals("made up", thrown.getMessage());
    assertFalse(bench.unit.sourceOn || bench.unit.relayClosed || !bench.unit.discharging);
  }

  @Test
  void aSilentDigitizerEndsTheRunAndSaysThatTheDischargeWasNotVerified() {
    bench.before =
        command -> {
          if (command.equals("digitizer next") && bench.told.contains("load input true")) {
            throw new InstrumentFault("digitizer", "sampling", "no frame within 400 ms", "Look.");
          }
        };
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertEquals("digitizer: sampling: no frame within 400 ms.", result.end().saw());
    assertEquals("Look.", result.end().remedy());
    assertEquals("full", result.end().step());
    assertTrue(result.troubles().get(0).startsWith("Verifying the discharge failed"));
    assertFalse(bench.unit.sourceOn || bench.unit.relayClosed || !bench.unit.discharging);
  }
}
