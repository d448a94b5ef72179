package corewright.bench.run;

import corewright.profiles.Step;

/**
 * A slow ramp of the input under load, as a battery goes while an engine is cranked for long: down
 * to its end, or to where the output has plainly let go. It turns back there, before the output is
 * so low that the run would be cut off.
 */
final class FallingStep implements StepKind {
  /** For input and load to settle. */
  private static final double BEFORE_S = 0.5;

  /** At rest, for the level that the output is held against; and under load before the ramp. */
  private static final double LEVEL_S = 0.2;

  private static final double TICK_S = 0.02;

  /** Below this part of its level the output has let go; every limit of it lies above. */
  private static final double LET_GO = 0.9;

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return 2 * (BEFORE_S + LEVEL_S) + down_s(step) + BACK_S;
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    double most_s = most_s(step, station.context().plan());
    station.levels().to(step.input_V(), step.inputLimit_A(), 0);
    station.sampler().watch(BEFORE_S);
    station.segment(step, most_s);
    double level_V = output(LEVEL_S, station);
    station.way(step);
    station.levels().to(step.input_V(), step.inputLimit_A(), step.load_A());
    ByHand.wait(step, station);
    station.sampler().watch(BEFORE_S);
    station.segment(step, most_s);
    output(LEVEL_S, station);
    int ticks = (int) Math.ceil(down_s(step) / TICK_S);
    boolean holds = true;
    for (int tick = 1; holds && tick <= ticks; tick++) {
      double fallen_V = (step.input_V() - step.detail().to_V()) * tick / ticks;
      station.levels().source(step.input_V() - fallen_V, step.inputLimit_A());
      holds = output(TICK_S, station) > LET_GO * level_V;
    }
    station.back(step);
  }

  /** Watches for so long; the lowest mean of a frame meanwhile, V. */
  private static double output(double watch_s, Station station) {
    double until_s = station.sampler().at_s() + watch_s;
    double lowest_V = Double.POSITIVE_INFINITY;
    do {
      lowest_V = Math.min(lowest_V, Means.of(station.sampler().next(), "output"));
    } while (station.sampler().at_s() < until_s);
    return lowest_V;
  }

  private static double down_s(Step step) {
    return (step.input_V() - step.detail().to_V()) / step.detail().ramp_VperS();
  }
}
