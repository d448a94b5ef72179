package corewright.station.demo;

import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.function.Predicate;

/** A profile with fewer and shorter holds, to ask about one limit in little time. */
final class Shortened {
  /** What remains to be judged of each hold, s. */
  private static final double WINDOW_S = 0.06;

  private Shortened() {}

  /**
   * The same profile, its holds as long as settling, guard and a tenth of a second need.
   *
   * @param kept which holds
   * @param least_s length of the longest hold kept, s, for a limit that needs time; 0: none
   */
  static Profile of(Profile p, Predicate<Step> kept, double least_s) {
    double short_s = p.settle_s().orElseThrow() + p.guard_s().orElseThrow() + WINDOW_S;
    double longest_s = p.steps().stream().mapToDouble(Step::hold_s).max().orElseThrow();
    return p.withSteps(
        p.steps().stream()
            .filter(s -> s.kind() != Step.Kind.HOLD || kept.test(s))
            .map(
                s ->
                    s.kind() == Step.Kind.HOLD
                        ? lasting(s, s.hold_s() < longest_s ? short_s : Math.max(short_s, least_s))
                        : s)
            .toList());
  }

  private static Step lasting(Step s, double hold_s) {
    return new Step(
        s.id(), s.kind(), s.title(), s.input_V(), s.inputLimit_A(), s.load_A(), hold_s, s.judged());
  }
}
