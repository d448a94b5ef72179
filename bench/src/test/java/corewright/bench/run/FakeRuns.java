package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

/** Runs on the bench that is faked, for tests that break it. */
abstract class FakeRuns {
  @TempDir Path folder;
  final FakeBench bench = new FakeBench();

  RunResult run(RunPlan plan) {
    return run(plan, RunListener.NONE, new Stop());
  }

  RunResult run(RunPlan plan, RunListener listener, Stop stop) {
    return new RunEngine(bench.clock).run(plan, bench.instruments(), listener, stop);
  }

  void isSafe() {
    assertFalse(bench.unit.relayClosed, "relay");
    assertFalse(bench.unit.loadOn, "load");
    assertTrue(bench.unit.discharging, "discharge");
    assertTrue(bench.unit.capacitor_V < 5, bench.unit.capacitor_V + " V");
  }
}
