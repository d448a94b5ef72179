package corewright.bench.run;

import corewright.bench.record.RunEnd;

/** Leaves the steps, whatever depth they have come to. Caught by the engine alone. */
final class EndOfRun extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient RunEnd end;

  EndOfRun(RunEnd end) {
    super(end.saw(), null, false, false); // no stack trace: it is an outcome
    this.end = end;
  }

  RunEnd end() {
    return end;
  }
}
