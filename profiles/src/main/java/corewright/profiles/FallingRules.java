package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import corewright.measures.Quantity;
import java.util.function.Consumer;

/** What a profile must keep about an input that falls under load. */
final class FallingRules {
  private FallingRules() {}

  /** It begins where an input is good, and what lies below the zones says nothing. */
  static void zones(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : KindRules.of(draft, Step.Kind.FALLING)) {
      Fed.good(draft, step, found);
      if (step.number("to_V") < draft.tolerated_V()) {
        found.accept(
            step.mistake(
                "to_V",
                "below " + shown(draft.tolerated_V()) + " V nothing is said about a unit",
                "Write at least " + shown(draft.tolerated_V())));
      }
      Fed.enough(draft, step, step.number("load_A"), step.number("to_V"), found);
    }
  }

  /** A good unit holds all the way and has no such reading: every run of it would be incomplete. */
  static void limits(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section limit : draft.limits()) {
      if (LimitRules.quantity(limit).filter(q -> q == Quantity.HOLDS_TO).isPresent()) {
        found.accept(
            limit.mistake(
                "quantity",
                "a unit that holds all the way has no holdsTo, and would never be judged",
                "Hold fallingLowest against its limit"));
      }
    }
  }
}
