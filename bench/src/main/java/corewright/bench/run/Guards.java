package corewright.bench.run;

import java.util.List;
import java.util.stream.Stream;

/** What must be true before anything is energised. */
public final class Guards {

  private Guards() {}

  /** What can be asked before the bench is opened; the others are asked at the start. */
  public static List<GuardFinding> beforehand(RunPlan plan) {
    return Stream.concat(PlanGuards.ALL.stream(), BenchGuards.ON_PAPER.stream())
        .map(guard -> guard.ask(plan))
        .toList();
  }

  /** Ids of those that only an open bench can answer. */
  public static List<String> atTheStart() {
    List<String> onPaper = BenchGuards.ON_PAPER.stream().map(Guard.OnPaper::id).toList();
    return BenchGuards.ALL.stream().map(Guard::id).filter(id -> !onPaper.contains(id)).toList();
  }

  /** Asks every guard, in a fixed order. Energises nothing. */
  public static List<GuardFinding> ask(RunPlan plan, BenchInstruments bench) {
    return Stream.concat(
            PlanGuards.ALL.stream().map(Guard.OnPaper::guard), BenchGuards.ALL.stream())
        .map(guard -> guard.ask(plan, bench))
        .toList();
  }
}
