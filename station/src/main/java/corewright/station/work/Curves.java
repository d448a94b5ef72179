package corewright.station.work;

import corewright.bench.record.RunRecord;

/** Whether a run left something to draw. */
public final class Curves {
  private Curves() {}

  /** Whether a load was held in it and its samples were kept: without that no picture is made. */
  public static boolean drawable(RunRecord run) {
    return !run.capture().isEmpty() && run.measured().filter(m -> !m.holds().isEmpty()).isPresent();
  }
}
