package corewright.bench.run;

import corewright.bench.record.RunEnd;
import corewright.measures.Figures;
import corewright.profiles.Step;

/** Waits until the measured current is what a person was asked to set, and has stayed there. */
final class ByHand {
  /** A hand sets a load no better (common practice, no source). */
  private static final double SHARE = 0.05;

  private static final double LEAST_A = 0.02;

  /** So long it must stay before the hold begins, s. */
  private static final double STAYS_S = 0.3;

  /** So long a person is waited for, s. */
  static final double PATIENCE_S = 120;

  private ByHand() {}

  /** Where a person sets the load; the deadline is then the caller's to set again. */
  static void wait(Step step, StepKind.Station station) {
    if (station.context().bench().load().isSetByHand()) {
      station.sampler().deadline(Hold.allowance_s(PATIENCE_S));
      waitFor(step, station);
    }
  }

  private static void waitFor(Step step, StepKind.Station station) {
    double tolerance_A = Math.max(LEAST_A, SHARE * step.load_A());
    double until_s = station.sampler().at_s() + PATIENCE_S;
    double since_s = station.sampler().at_s();
    double read_A = 0;
    while (station.sampler().at_s() - since_s < STAYS_S) {
      FrameView view = station.sampler().next();
      read_A = Means.of(view, "load");
      if (Math.abs(read_A - step.load_A()) > tolerance_A) {
        since_s = station.sampler().at_s();
      }
      if (station.sampler().at_s() > until_s) {
        throw new EndOfRun(
            new RunEnd(
                RunEnd.Kind.BENCH_FAULT,
                step.id(),
                station.sampler().at_s(),
                "The load was to be set to "
                    + Figures.number(step.load_A(), 2)
                    + " A by hand, and reads "
                    + Figures.number(read_A, 2)
                    + " A after "
                    + Figures.number(PATIENCE_S, 0)
                    + " s.",
                "Begin again, and set the load when asked."));
      }
    }
  }
}
