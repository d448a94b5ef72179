package corewright.bench.run;

/** What every part of a run needs. */
record RunContext(
    RunPlan plan,
    BenchInstruments bench,
    Framing framing,
    RunListener listener,
    Stop stop,
    Clock clock) {}
