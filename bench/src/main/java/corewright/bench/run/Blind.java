package corewright.bench.run;

import corewright.measures.Figures;
import corewright.profiles.AbortLimits;
import java.util.Optional;

/**
 * Samples are missing. While they are, no limit is watched: a hole no longer than the shortest time
 * that a limit allows is kept as a gap, a longer one ends the run, and so do many.
 */
final class Blind implements Trip {
  private static final int MOST_BROKEN = 10;

  private static final String REMEDY =
      "Use a shorter cable or another adapter, and keep it away from the load's leads.";

  private final double allowed_s;
  private int broken;

  Blind(AbortLimits abort) {
    this.allowed_s = Math.min(abort.underHold_s(), abort.inputOver_s());
  }

  @Override
  public Optional<Seen> look(FrameView view) {
    long missing = view.frame().first() - view.previousEnd();
    if (missing < 0) {
      return Trip.fault(
          "The digitizer counts its samples backwards: "
              + view.frame().first()
              + " after "
              + view.previousEnd()
              + ".",
          "Switch the board off and on; load its firmware again if it stays so.");
    }
    if (missing > allowed_s * view.rate_Hz()) {
      return Trip.fault(
          "The digitizer's line was blind for "
              + Figures.number((double) missing / view.rate_Hz() * 1000, 1)
              + " ms, and the limits allow "
              + Figures.number(allowed_s * 1000, 1)
              + " ms.",
          REMEDY);
    }
    broken +=
        view.frame().brokenBefore() + (missing > 0 && view.frame().brokenBefore() == 0 ? 1 : 0);
    return broken > MOST_BROKEN
        ? Trip.fault(broken + " frames were broken, lost or repeated.", REMEDY)
        : Optional.empty();
  }
}
