package corewright.bench.run;

import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * One reason not to energise. Asked once before a run; none is skipped, so that a person sees all
 * of them at once.
 *
 * @param id stable, printed, as {@code interlock-whole}
 * @param check what it finds
 */
record Guard(String id, BiFunction<RunPlan, BenchInstruments, Answer> check) {

  /**
   * What a check comes to.
   *
   * @param remedy empty if it passed
   */
  record Answer(boolean passed, String saw, String remedy) {

    static Answer of(boolean passed, String saw, String remedy) {
      return new Answer(passed, saw, passed ? "" : remedy);
    }
  }

  /** A check that needs no bench: it can be asked before one is opened. */
  static OnPaper onPaper(String id, Function<RunPlan, Answer> check) {
    return new OnPaper(id, check);
  }

  /** Asks the plan alone. */
  record OnPaper(String id, Function<RunPlan, Answer> check) {

    GuardFinding ask(RunPlan plan) {
      return finding(id, () -> check.apply(plan));
    }

    Guard guard() {
      return new Guard(id, (plan, bench) -> check.apply(plan));
    }
  }

  /** A check that cannot be made has not passed. */
  GuardFinding ask(RunPlan plan, BenchInstruments bench) {
    return finding(id, () -> check.apply(plan, bench));
  }

  private static GuardFinding finding(String id, Supplier<Answer> check) {
    try {
      Answer answer = check.get();
      return new GuardFinding(id, answer.passed(), answer.saw(), answer.remedy());
    } catch (RuntimeException unknown) {
      return new GuardFinding(
          id,
          false,
          "It could not be checked: " + unknown.getMessage(),
          "Mend that first; what is not known counts as unsafe.");
    }
  }
}
