package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import java.util.List;
import java.util.function.Consumer;

/** What the steps of a profile must keep: order, levels, times. */
final class StepRules {
  private static final List<String> UNPOWERED = List.of("deadCheck", "byHand", "discharge", "");

  private StepRules() {}

  static void names(ProfileDraft draft, Consumer<Mistake> found) {
    Rules.uniqueIds(draft.steps(), "steps", found);
  }

  /** Nothing is powered that was not found dead first and then powered with a limited current. */
  static void deadFirst(ProfileDraft draft, Consumer<Mistake> found) {
    boolean dead = false;
    boolean first = false;
    for (Section step : draft.steps()) {
      String kind = step.text("kind");
      if (!UNPOWERED.contains(kind) && !first) {
        if (!dead) {
          found.accept(
              step.mistake(
                  "",
                  "'" + step.text("id") + "' powers the unit before a dead check",
                  "Put a step of kind deadCheck before it"));
        }
        if (!kind.equals("firstPower")) {
          found.accept(
              step.mistake(
                  "",
                  "'" + step.text("id") + "' is the first step with power and has no low limit",
                  "Put a step of kind firstPower before it"));
        }
        first = true;
      }
      dead |= kind.equals("deadCheck");
    }
  }

  static void dischargeLast(ProfileDraft draft, Consumer<Mistake> found) {
    List<Section> steps = draft.steps();
    if (steps.isEmpty()) {
      return;
    }
    Section last = steps.get(steps.size() - 1);
    if (!last.text("kind").equals("discharge")) {
      found.accept(
          last.mistake(
              "",
              "the profile ends with the unit charged, after '" + last.text("id") + "'",
              "End it with a step of kind discharge"));
    }
    for (Section step : steps.subList(0, steps.size() - 1)) {
      if (step.text("kind").equals("discharge")) {
        found.accept(
            step.mistake(
                "kind", "steps follow after the discharge", "Discharge in the last step only"));
      }
    }
  }

  static void loads(ProfileDraft draft, Consumer<Mistake> found) {
    double rated = draft.family().ratedLoad_A();
    for (Section hold : draft.steps()) {
      if (hold.number("load_A") > rated) {
        found.accept(
            hold.mistake(
                "load_A",
                shown(hold.number("load_A"))
                    + " A is above the rated load of "
                    + draft.family().id()
                    + ", "
                    + shown(rated)
                    + " A",
                "Write at most " + shown(rated)));
      }
    }
  }

  static void inputs(ProfileDraft draft, Consumer<Mistake> found) {
    double ceiling = draft.family().inputCeiling_V();
    for (Section step : draft.steps()) {
      double input = step.number("input_V");
      if (input > ceiling) {
        found.accept(
            step.mistake(
                "input_V",
                shown(input)
                    + " V is above what "
                    + draft.family().id()
                    + " may be given, "
                    + shown(ceiling)
                    + " V",
                "Write at most " + shown(ceiling)));
      }
    }
    for (Section hold : draft.judgedHolds()) {
      if (hold.number("input_V") < draft.tolerated_V() && !draft.supplyDrops()) {
        found.accept(
            hold.mistake(
                "input_V",
                "with "
                    + shown(hold.number("input_V"))
                    + " V the input is below "
                    + shown(draft.tolerated_V())
                    + " V and every run would be void",
                "Write at least "
                    + shown(draft.good_V())
                    + ", or \"supplyDrops\": true if the supply is dropped on purpose"));
      }
    }
  }

  /** The source must be able to give what the unit needs, or its limit is read as a weak unit. */
  static void sourceLimits(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section hold : draft.judgedHolds()) {
      Fed.enough(draft, hold, hold.number("load_A"), hold.number("input_V"), found);
    }
  }

  /** Something must be left to judge between the settling after an edge and the next edge. */
  static void windows(ProfileDraft draft, Consumer<Mistake> found) {
    double lost_s = draft.file().number("settle_s", 0) + draft.file().number("guard_s", 0);
    for (Section hold : draft.judgedHolds()) {
      if (hold.number("hold_s") <= lost_s) {
        found.accept(
            hold.mistake(
                "hold_s",
                shown(hold.number("hold_s"))
                    + " s is over before settle_s and guard_s are, "
                    + shown(lost_s)
                    + " s",
                "Hold longer, or settle shorter"));
      }
    }
  }

  static void proved(ProfileDraft draft, Consumer<Mistake> found) {
    double proving = draft.file().number("provingLoad_A");
    boolean loaded =
        draft.judgedHolds().stream().anyMatch(hold -> hold.number("load_A") >= proving);
    if (!loaded && !Double.isNaN(proving)) {
      found.accept(
          draft
              .file()
              .mistake(
                  "steps",
                  "no judged hold draws provingLoad_A, " + shown(proving) + " A",
                  "Add a loaded hold: a reading at rest proves nothing"));
    }
  }
}
