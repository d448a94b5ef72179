package corewright.bench.run;

import corewright.bench.record.RunEnd;
import corewright.measures.Figures;
import corewright.profiles.Step;

/**
 * The first power after the unit was put in: a slow ramp behind a small current limit, load off. A
 * unit that takes the whole current for longer than charging explains is never given more.
 *
 * @see "common practice, no source: refuse when the limit is held for more than 2 s"
 */
final class FirstPower implements StepKind {
  private static final double AT_LIMIT = 0.95;
  private static final double AT_LIMIT_S = 2;
  private static final double TICK_S = 0.1;

  /** The rest of the step is for the charging current to die away. */
  private static final double RAMP_SHARE = 0.7;

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return step.hold_s();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(step.hold_s());
  }

  @Override
  public void run(Step step, Station station) {
    station.levels().powerUp(step.inputLimit_A());
    station.sampler().relayClosed();
    int ticks = (int) Math.ceil(step.hold_s() / TICK_S);
    int atLimit = 0;
    FrameView view = station.sampler().next();
    for (int tick = 1; tick <= ticks; tick++) {
      double share = Math.min(1, tick / (RAMP_SHARE * ticks));
      station.levels().source(step.input_V() * share, step.inputLimit_A());
      view = watch(station);
      station.aids().firstPower(BehindLimit.of(view, feed(station)));
      atLimit = isAtLimit(step, station, view) ? atLimit + 1 : 0;
      if (atLimit * TICK_S > AT_LIMIT_S) {
        throw refuse(step, station, view, "took the whole");
      }
    }
    if (atLimit > 0) {
      throw refuse(step, station, view, "still takes the whole");
    }
    if (input_V(station, view) < AT_LIMIT * step.input_V()) {
      throw refuse(step, station, view, "did not come to its input voltage behind");
    }
  }

  private static FrameView watch(Station station) {
    FrameView view = station.sampler().next();
    double until_s = view.at_s(0) + TICK_S;
    while (view.at_s(view.samples()) < until_s) {
      view = station.sampler().next();
    }
    return view;
  }

  private static boolean isAtLimit(Step step, Station station, FrameView view) {
    double current_A =
        view.channel("inputCurrent") >= 0
            ? Means.of(view, "inputCurrent")
            : station.context().bench().source().current().value();
    return current_A >= AT_LIMIT * step.inputLimit_A();
  }

  private static double input_V(Station station, FrameView view) {
    return Means.of(view, feed(station));
  }

  private static String feed(Station station) {
    return station.context().plan().profile().feeds().get(0).name();
  }

  private static EndOfRun refuse(Step step, Station station, FrameView view, String what) {
    return new EndOfRun(
        new RunEnd(
            RunEnd.Kind.REFUSED_TO_POWER,
            step.id(),
            view.at_s(0),
            "The unit "
                + what
                + " "
                + Figures.number(step.inputLimit_A(), 2)
                + " A, at "
                + Figures.number(input_V(station, view), 2)
                + " V of "
                + Figures.number(step.input_V(), 2)
                + " V.",
            "Do not power it again; look for a short at its input or output, in the empty fixture"
                + " first."));
  }
}
