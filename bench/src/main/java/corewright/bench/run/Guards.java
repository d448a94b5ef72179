package corewright.bench.run;

import java.util.List;
import java.util.stream.Stream;

/** What must be true before anything is energised. */
public final class Guards {

  private Guards() {}

  /** Asks every guard, in a fixed order. Energises nothing. */
  public static List<GuardFinding> ask(RunPlan plan, BenchInstruments bench) {
    return Stream.concat(PlanGuards.ALL.stream(), BenchGuards.ALL.stream())
        .map(guard -> guard.ask(plan, bench))
        .toList();
  }
}
