package corewright.bench.run;

import corewright.bench.record.RunEnd;
import java.util.function.Supplier;

/** Leaves the steps, whatever depth they have come to. Caught by the engine alone. */
final class EndOfRun extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient Supplier<RunEnd> end;

  EndOfRun(RunEnd end) {
    this(() -> end);
  }

  /**
   * @param end asked once the safe state has been commanded: words take longer than the command
   */
  EndOfRun(Supplier<RunEnd> end) {
    super(null, null, false, false); // no stack trace: it is an outcome
    this.end = end;
  }

  RunEnd end() {
    return end.get();
  }

  @Override
  public String getMessage() {
    return end().saw();
  }
}
