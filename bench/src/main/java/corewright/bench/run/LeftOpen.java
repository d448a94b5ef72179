package corewright.bench.run;

import corewright.bench.record.HandReading;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Step;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Steps that this bench cannot do. What a person read elsewhere was given with the run, with name
 * and instrument; what nobody entered stands as not measured, and says why.
 *
 * @param why by id of the step
 * @param without what of a step that was done was left out, by its id, each a sentence
 */
record LeftOpen(Map<String, String> why, Map<String, List<String>> without, RunPlan plan) {
  /** Nothing was left out. */
  LeftOpen(RunPlan plan) {
    this(Map.of(), Map.of(), plan);
  }

  LeftOpen {
    why = Map.copyOf(why);
    without = Map.copyOf(without);
  }

  static LeftOpen by(RunPlan plan, BenchInstruments bench) {
    Abilities able = Abilities.of(plan, bench);
    return new LeftOpen(able.leaves(plan.profile()), able.leavesInPart(plan.profile()), plan);
  }

  boolean has(Step step) {
    return why.containsKey(step.id());
  }

  /** What of it was left out, each a sentence. */
  List<String> without(Step step) {
    return without.getOrDefault(step.id(), List.of());
  }

  private Optional<String> why(Step step) {
    return Optional.ofNullable(why.get(step.id()))
        .map(reason -> reason + ", and nobody entered it.");
  }

  /** What was entered, and that the rest was not. */
  Map<Quantity, Reading> readings() {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    for (Step step : plan.profile().steps()) {
      why(step)
          .map(Reading::none)
          .ifPresent(
              none -> {
                step.yields().forEach(quantity -> readings.put(quantity, none));
                step.byHand().ifPresent(q -> readings.put(q, entered(step).orElse(none)));
              });
    }
    return readings;
  }

  /** A sentence for each step that was left open, and for what was entered and not needed. */
  List<String> sentences() {
    List<String> said = new ArrayList<>();
    for (Step step : plan.profile().steps()) {
      boolean entered = plan.byHand().containsKey(step.id());
      Optional<String> why = why(step);
      if (entered && why.isEmpty()) {
        said.add("Entered by hand and not used, because the bench did it: " + step.title() + ".");
      }
      why.filter(reason -> !entered)
          .map(r -> Character.toUpperCase(r.charAt(0)) + r.substring(1))
          .ifPresent(reason -> said.add("Not measured: " + step.title() + ". " + reason));
      without(step).forEach(lack -> said.add("Done in part: " + step.title() + ". " + lack));
    }
    return said;
  }

  private Optional<Reading> entered(Step step) {
    return Optional.ofNullable(plan.byHand().get(step.id())).map(LeftOpen::reading);
  }

  private static Reading reading(HandReading hand) {
    return new Reading.Measured(hand.value(), List.of(hand.sentence()));
  }
}
