package corewright.bench.run;

import corewright.bench.record.RunEnd;
import corewright.profiles.Step;
import java.util.Optional;

/**
 * The whole of a start: source off, output run down on the discharge resistor, then the source
 * switched on at once behind the step's limit, load off.
 */
final class StartStep implements StepKind {
  /** Sampled before the source is switched on, s: the record shows where it came from. */
  private static final double BEFORE_S = 0.05;

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return step.hold_s() + BEFORE_S + plan.family().discharge().within_s() / 2;
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(step.hold_s() + BEFORE_S + plan.family().discharge().within_s());
  }

  @Override
  public void run(Step step, Station station) {
    RunContext context = station.context();
    station.levels().unpower();
    Optional<String> charged =
        new DischargeProof(station.sampler(), context.bench(), context.plan().family().discharge())
            .falls();
    if (charged.isPresent()) {
      throw new EndOfRun(
          new RunEnd(
              RunEnd.Kind.BENCH_FAULT,
              step.id(),
              station.sampler().at_s(),
              charged.get(),
              "Treat the unit as charged: check the discharge path, then discharge it by hand."));
    }
    station.segment(step, Hold.allowance_s(step.hold_s() + BEFORE_S));
    station.levels().ready(step.input_V(), step.inputLimit_A());
    station.sampler().watch(BEFORE_S);
    context.bench().source().output(true);
    station.sampler().watch(step.hold_s());
  }
}
