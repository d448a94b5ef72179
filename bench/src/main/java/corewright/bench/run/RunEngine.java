package corewright.bench.run;

/**
 * Runs a load-hold profile on a bench. Whatever happens, it comes back with the bench in its safe
 * state and says how the run ended; it does not throw for anything that the bench or the unit did.
 */
public final class RunEngine {

  /**
   * @param clock deadlines and dates
   */
  public RunEngine(Clock clock) {}

  /**
   * Guards, protection, steps, safe state.
   *
   * @param bench opened and identified; stays open
   * @param stop set it to end the run early
   */
  @SuppressWarnings("DoNotCallSuggester") // until it is built
  public RunResult run(RunPlan plan, BenchInstruments bench, RunListener listener, Stop stop) {
    throw new UnsupportedOperationException("the engine is being built");
  }
}
