package corewright.bench.run;

/**
 * What one guard found before anything was energised.
 *
 * @param guard its stable id, as {@code interlock-whole}
 * @param passed whether the run may go on
 * @param saw one sentence: what it looked at, with the value
 * @param remedy one sentence: what to do; empty if passed
 */
public record GuardFinding(String guard, boolean passed, String saw, String remedy) {

  static GuardFinding pass(String guard, String saw) {
    return new GuardFinding(guard, true, saw, "");
  }

  static GuardFinding refuse(String guard, String saw, String remedy) {
    return new GuardFinding(guard, false, saw, remedy);
  }
}
