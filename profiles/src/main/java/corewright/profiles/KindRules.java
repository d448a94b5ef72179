package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import corewright.measures.Quantity;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** What a profile must keep about the kinds of step that are no holds. */
final class KindRules {
  /** A source that is told more often than this does not follow (common practice, no source). */
  private static final double FASTEST_VPERS = 5;

  /** A shorter stretch shows settling and no drift, s. */
  private static final double LEAST_CRANK_S = 1;

  /** Source and digitizer together are no better (common practice, no source). */
  private static final double ROOM = 0.99;

  private KindRules() {}

  /** A key that a kind does not take would be left out of what is done, in silence. */
  static void keys(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : draft.steps()) {
      Optional<Step.Kind> kind = StepKeys.kind(step.text("kind"));
      for (String key : step.keys()) {
        boolean known = kind.isEmpty() || StepKeys.of(kind.get()).more().contains(key);
        if (StepKeys.SOME.contains(key) && !known) {
          found.accept(
              step.mistake(
                  key,
                  "a step of kind " + step.text("kind") + " takes no " + key,
                  "Leave it out, or choose the kind that takes it"));
        }
      }
    }
  }

  /** The holds are measured as one capture: what stood between them would be a gap in it. */
  static void beside(ProfileDraft draft, Consumer<Mistake> found) {
    List<Section> steps = draft.steps();
    int first = Integer.MAX_VALUE;
    int last = -1;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).text("kind").equals("hold")) {
        first = Math.min(first, i);
        last = i;
      }
    }
    for (int i = first; i < last; i++) {
      if (!steps.get(i).text("kind").equals("hold")) {
        found.accept(
            steps
                .get(i)
                .mistake(
                    "kind",
                    "'" + steps.get(i).text("id") + "' stands between the holds",
                    "Put it before the first hold or after the last"));
      }
    }
  }

  static void ramps(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : concat(of(draft, Step.Kind.LOCK_OUT), of(draft, Step.Kind.FALLING))) {
      if (step.number("to_V") >= step.number("input_V")) {
        found.accept(
            step.mistake(
                "to_V",
                "the ramp goes down, and " + shown(step.number("to_V")) + " V is no lower",
                "Write less than input_V, " + shown(step.number("input_V"))));
      }
      if (step.number("ramp_VperS") > FASTEST_VPERS) {
        found.accept(
            step.mistake(
                "ramp_VperS",
                shown(step.number("ramp_VperS")) + " V/s is faster than a source follows",
                "Write at most " + shown(FASTEST_VPERS)));
      }
    }
  }

  /** A source that is set to the ceiling lies above it half of the time, and the run ends. */
  static void room(ProfileDraft draft, Consumer<Mistake> found) {
    double ceiling = draft.family().inputCeiling_V();
    for (Section step : draft.steps()) {
      boolean high = step.text("kind").equals(StepKeys.word(Step.Kind.HIGH_LINE));
      Stream.concat(high ? Stream.of(step) : Stream.of(), levels(step))
          .filter(s -> s.number("input_V") <= ceiling && s.number("input_V") > ROOM * ceiling)
          .forEach(
              s ->
                  found.accept(
                      s.mistake(
                          "input_V",
                          shown(s.number("input_V"))
                              + " V leave the source no room below "
                              + shown(ceiling)
                              + " V, where the run ends",
                          "Write at most " + shown(ROOM * ceiling))));
    }
  }

  private static Stream<Section> levels(Section step) {
    return step.each("levels").stream();
  }

  static void levels(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : draft.steps()) {
      for (Section level : step.each("levels")) {
        double input = level.number("input_V");
        if (input > draft.family().inputCeiling_V()) {
          found.accept(
              level.mistake(
                  "input_V",
                  shown(input)
                      + " V is above what "
                      + draft.family().id()
                      + " may be given, "
                      + shown(draft.family().inputCeiling_V())
                      + " V",
                  "Write at most " + shown(draft.family().inputCeiling_V())));
        }
      }
    }
    for (Section step : of(draft, Step.Kind.LINES)) {
      for (Section level : step.each("levels")) {
        if (level.number("input_V") < draft.tolerated_V()) {
          found.accept(
              level.mistake(
                  "input_V",
                  "below " + shown(draft.tolerated_V()) + " V nothing is said about a unit",
                  "Write at least " + shown(draft.tolerated_V())));
        }
      }
      settled(draft, step.each("levels"), found);
    }
  }

  /** A cranking is judged where the input is good; what leads there only passes by. */
  static void cranks(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : of(draft, Step.Kind.CRANK)) {
      List<Section> judged =
          step.each("levels").stream().filter(l -> l.flag("judged", true)).toList();
      if (judged.isEmpty()) {
        found.accept(
            step.mistake(
                "levels",
                "no level of '" + step.text("id") + "' is judged",
                "Leave out \"judged\": false at the plateau"));
      }
      for (Section level : judged) {
        if (level.number("input_V") < draft.tolerated_V()) {
          found.accept(
              level.mistake(
                  "input_V",
                  "below "
                      + shown(draft.tolerated_V())
                      + " V nothing is said about a unit, and every run would be void",
                  "Write at least " + shown(draft.good_V()) + ", or \"judged\": false"));
        }
        if (level.number("hold_s") <= LEAST_CRANK_S) {
          found.accept(
              level.mistake(
                  "hold_s",
                  "a drift is not read from " + shown(level.number("hold_s")) + " s",
                  "Hold for more than " + shown(LEAST_CRANK_S) + " s"));
        }
      }
      settled(draft, judged, found);
    }
  }

  /** After the decay nothing feeds the unit any more. */
  static void decayLast(ProfileDraft draft, Consumer<Mistake> found) {
    List<Section> steps = draft.steps();
    for (int i = 0; i + 1 < steps.size(); i++) {
      String next = steps.get(i + 1).text("kind");
      if (steps.get(i).text("kind").equals("decay") && !next.equals("discharge")) {
        found.accept(
            steps
                .get(i + 1)
                .mistake(
                    "kind",
                    "'" + steps.get(i + 1).text("id") + "' follows on a decay, without feed",
                    "Let the discharge follow"));
      }
    }
  }

  /** Something must be left of a level once the output has settled. */
  static void settled(ProfileDraft draft, List<Section> levels, Consumer<Mistake> found) {
    double lost_s = draft.file().number("settle_s", 0);
    for (Section level : levels) {
      if (level.flag("judged", true) && level.number("hold_s") <= lost_s) {
        found.accept(
            level.mistake(
                "hold_s",
                shown(level.number("hold_s"))
                    + " s is over before settle_s is, "
                    + shown(lost_s)
                    + " s",
                "Hold longer, or settle shorter"));
      }
    }
  }

  /** A reading of the run that no step of the profile gives would never be there. */
  static void given(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section limit : draft.limits()) {
      Optional<Quantity> quantity = LimitRules.quantity(limit);
      Optional<Step.Kind> kind = quantity.flatMap(StepKeys::giving);
      if (kind.isPresent() && of(draft, kind.get()).isEmpty()) {
        found.accept(
            limit.mistake(
                "quantity",
                "no step of this profile reads '" + limit.text("quantity") + "'",
                "Add a step of kind " + StepKeys.word(kind.get())));
      }
    }
  }

  /** What is read by hand is what no bench reads, each once, and no limit asks for another. */
  static void byHand(ProfileDraft draft, Consumer<Mistake> found) {
    Set<String> entered = new HashSet<>();
    List<String> known = StepKeys.BY_HAND.stream().map(Quantity::id).sorted().toList();
    for (Section step : of(draft, Step.Kind.BY_HAND)) {
      String quantity = step.text("quantity");
      if (!quantity.isEmpty() && !known.contains(quantity)) {
        found.accept(
            step.mistake(
                "quantity",
                "'" + quantity + "' is not read by hand",
                Rules.meant(quantity, known)));
      } else if (!quantity.isEmpty() && !entered.add(quantity)) {
        found.accept(
            step.mistake(
                "quantity", "'" + quantity + "' is entered twice", "Keep one of the steps"));
      }
    }
    for (Section limit : draft.limits()) {
      String quantity = limit.text("quantity");
      if (known.contains(quantity) && !entered.contains(quantity)) {
        found.accept(
            limit.mistake(
                "quantity",
                "no step of this profile reads '" + quantity + "'",
                "Add a step of kind byHand with it"));
      }
    }
  }

  /** Readings of a kind are those of the run: two steps of it would be two answers. */
  static void once(ProfileDraft draft, Consumer<Mistake> found) {
    for (Step.Kind kind : Step.Kind.values()) {
      if (!StepKeys.of(kind).yields().isEmpty()) {
        of(draft, kind).stream()
            .skip(1)
            .forEach(
                step ->
                    found.accept(
                        step.mistake(
                            "kind",
                            "'" + step.text("id") + "' is a second step of this kind",
                            "Keep one of them")));
      }
    }
  }

  private static List<Section> concat(List<Section> some, List<Section> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  static List<Section> of(ProfileDraft draft, Step.Kind kind) {
    String word = StepKeys.word(kind);
    return draft.steps().stream().filter(s -> s.text("kind").equals(word)).toList();
  }
}
