package corewright.bench.run;

import corewright.profiles.Step;
import java.util.Optional;

/** A step that is sampled faster than the rest while it holds; the way there and back is not. */
interface FastStep extends StepKind {

  @Override
  default Optional<Double> rate_Hz(Step step) {
    return Optional.empty();
  }

  @Override
  default double usual_s(Step step, RunPlan plan) {
    return 2 * BACK_S + step.hold_s();
  }

  @Override
  default double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }
}
