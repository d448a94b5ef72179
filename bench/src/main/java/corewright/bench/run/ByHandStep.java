package corewright.bench.run;

import corewright.profiles.Step;
import java.util.Optional;

/** What no bench does: nothing is switched. A person reads it elsewhere; see {@link LeftOpen}. */
final class ByHandStep implements StepKind {

  @Override
  public Optional<String> cannot(Step step, Abilities bench) {
    return Optional.of("this bench cannot do it");
  }

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return 0;
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(0);
  }

  @Override
  public void run(Step step, Station station) {
    // Nothing is asked of the unit.
  }
}
