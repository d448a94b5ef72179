package corewright.measures.meter;

import corewright.measures.MeterSettings;
import corewright.measures.hold.Hold;
import java.util.List;

/**
 * What is left out at both ends of every hold.
 *
 * @param settle_s after the edge
 * @param guard_s before the next edge
 */
record Settling(double settle_s, double guard_s) {
  private static final double LONGEST_SETTLE_S = 0.5;
  private static final double LONGEST_GUARD_S = 0.02;

  /** As given, or a fifth and a hundredth of the shortest hold, at most 0.5 s and 20 ms. */
  static Settling of(MeterSettings settings, List<Hold> holds) {
    double shortest_s = holds.stream().mapToDouble(Hold::length_s).min().orElse(0);
    return new Settling(
        settings.settle_s().orElse(Math.min(LONGEST_SETTLE_S, shortest_s / 5)),
        settings.guard_s().orElse(Math.min(LONGEST_GUARD_S, shortest_s / 100)));
  }
}
