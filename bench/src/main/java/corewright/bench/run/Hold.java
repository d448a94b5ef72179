package corewright.bench.run;

import corewright.profiles.Step;

/** Load and line held constant for a number of samples. */
final class Hold implements StepKind {
  /** Host time may run this much longer than sample time before the digitizer is not believed. */
  private static final double SLACK = 1.5;

  private static final double SLACK_S = 10;

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return step.hold_s();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return allowance_s(step.hold_s());
  }

  static double allowance_s(double sample_s) {
    return sample_s * SLACK + SLACK_S;
  }

  @Override
  public void run(Step step, Station station) {
    station.aids().holdBegins(station.sampler().at_s());
    station.levels().hold(step);
    ByHand.wait(step, station);
    station.sampler().deadline(most_s(step, station.context().plan()));
    long samples = Math.round(step.hold_s() * station.context().framing().rate_Hz());
    long until = station.sampler().end() + samples;
    while (station.sampler().end() < until) {
      station.sampler().next();
      if (step.load_A() == 0 && station.sampler().end() >= until - samples / 2) {
        station.aids().agreement().ifPresent(meter -> meter.look(station));
      }
    }
  }
}
