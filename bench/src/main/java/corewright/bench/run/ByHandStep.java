package corewright.bench.run;

import corewright.bench.record.HandReading;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Step;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What this bench cannot do: nothing is switched. What a person read elsewhere was given with the
 * run, with name and instrument; else it stands as not measured, and says so.
 */
final class ByHandStep implements StepKind {

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

  /** What was given, and what was not. */
  static Map<Quantity, Reading> readings(RunPlan plan) {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    for (Step step : steps(plan)) {
      Reading read =
          Optional.ofNullable(plan.byHand().get(step.id()))
              .<Reading>map(ByHandStep::reading)
              .orElse(Reading.none("this bench cannot do it, and nobody entered it."));
      step.detail().quantity().ifPresent(quantity -> readings.put(quantity, read));
    }
    return readings;
  }

  /** A sentence for each step that was left open. */
  static List<String> open(RunPlan plan) {
    return steps(plan).stream()
        .filter(step -> !plan.byHand().containsKey(step.id()))
        .map(
            step ->
                "Not measured: "
                    + step.title()
                    + ". This bench cannot do it, and nobody entered it.")
        .toList();
  }

  private static Reading reading(HandReading hand) {
    return new Reading.Measured(hand.value(), List.of(hand.sentence()));
  }

  private static List<Step> steps(RunPlan plan) {
    return plan.profile().steps().stream().filter(s -> s.kind() == Step.Kind.BY_HAND).toList();
  }
}
