package corewright.bench.run;

import java.time.Instant;

/**
 * Runs a load-hold profile on a bench. Whatever happens, it comes back with the bench in its safe
 * state and says how the run ended; it does not throw for anything that the bench or the unit did.
 */
public final class RunEngine {
  private final Clock clock;

  /**
   * @param clock deadlines and dates
   */
  public RunEngine(Clock clock) {
    this.clock = clock;
  }

  /**
   * Identities, safe state, guards, protection, steps, safe state, proof that no charge is left.
   * The run stays open on disk until {@link corewright.bench.capture.OpenRuns#settled} says that
   * its result is in the record.
   *
   * @param bench opened and identified; stays open
   * @param stop set it to end the run early
   * @throws java.io.UncheckedIOException if the folder cannot be written; nothing was commanded
   *     then
   */
  public RunResult run(RunPlan plan, BenchInstruments bench, RunListener listener, Stop stop) {
    Instant started = clock.wall();
    try (Recording recording = Recording.begin(plan, started)) {
      return new OneRun(plan, bench, listener, stop, clock, recording).from(started);
    }
  }
}
