package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What a profile must keep about events and the starter's swing while it cranks. */
final class CrankRules {
  /** The lowest of a dip is a mean over an eighth of a pulse: two samples of it at least. */
  private static final int FEWEST_IN_A_PULSE = 16;

  /** Fewer, and a swing is neither told from a drift nor measured (common practice, no source). */
  private static final double FEWEST_SWINGS = 3;

  /** Source and digitizer together are no better (common practice, no source). */
  private static final double ROOM = 0.99;

  private CrankRules() {}

  static void events(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : draft.steps()) {
      if (!isCrank(step) || !step.has("pulse_A")) {
        continue;
      }
      PulseRules.load(draft, step, found);
      double rate_Hz = step.number("sampleRate_Hz", draft.file().number("sampleRate_Hz"));
      double least_Hz = Math.ceil(FEWEST_IN_A_PULSE / step.number("width_s"));
      if (rate_Hz < least_Hz) {
        found.accept(
            step.mistake(
                "width_s",
                "with " + shown(rate_Hz) + " samples a second the dip of a pulse is not seen",
                "Write at least " + shown(least_Hz) + " as sampleRate_Hz"));
      }
      fed(draft, step, found);
    }
  }

  /** A source that is cut off sags as a weak unit does. */
  private static void fed(ProfileDraft draft, Section step, Consumer<Mistake> found) {
    double mean = PulseRules.mean_A(step);
    for (Section level : judged(step)) {
      Fed.enough(draft, step, mean, level.number("input_V"), found);
    }
  }

  /** It is told what a unit does far below its zones; whether that is good nobody has said. */
  static void told(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section limit : draft.limits()) {
      Optional<Step.Kind> kind = LimitRules.quantity(limit).flatMap(StepKeys::giving);
      if (kind.equals(Optional.of(Step.Kind.SURVIVAL))) {
        found.accept(
            limit.mistake(
                "quantity",
                "'" + limit.text("quantity") + "' is told and not judged",
                "Leave the limit out"));
      }
    }
    for (Section step : draft.steps()) {
      List<Section> levels = step.each("levels");
      if (step.text("kind").equals(StepKeys.word(Step.Kind.SURVIVAL))
          && !levels.isEmpty()
          && levels.get(levels.size() - 1).number("input_V") < draft.good_V()) {
        found.accept(
            step.mistake(
                "levels",
                "the input does not come back to a good one, "
                    + shown(draft.good_V())
                    + " V, in which a unit would",
                "Add a level"));
      }
    }
  }

  static void swings(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : draft.steps()) {
      for (Section level : step.each("levels")) {
        if (!level.has("swing_Vpp")) {
          continue;
        }
        if (isCrank(step)) {
          swing(draft, level, found);
        } else {
          found.accept(
              level.mistake(
                  "swing_Vpp",
                  "the input stands still in a step of kind " + step.text("kind"),
                  "Leave the swing out"));
        }
      }
    }
  }

  private static void swing(ProfileDraft draft, Section level, Consumer<Mistake> found) {
    double half_V = level.number("swing_Vpp") / 2;
    double trough_V = level.number("input_V") - half_V;
    double crest_V = level.number("input_V") + half_V;
    double most_V = ROOM * draft.family().inputCeiling_V();
    boolean judged = level.flag("judged", true);
    if (judged && trough_V < draft.tolerated_V()) {
      found.accept(
          level.mistake(
              "swing_Vpp",
              "the troughs of the swing lie at "
                  + shown(trough_V)
                  + " V, below "
                  + shown(draft.tolerated_V())
                  + " V, and every run would be void",
              "Write less, or a higher input_V"));
    }
    if (crest_V > most_V) {
      found.accept(
          level.mistake(
              "swing_Vpp",
              "the crests of the swing lie at "
                  + shown(crest_V)
                  + " V, above "
                  + shown(most_V)
                  + " V",
              "Write less, or a lower input_V"));
    }
    if (judged && level.number("hold_s") * level.number("swing_Hz") < FEWEST_SWINGS) {
      found.accept(
          level.mistake(
              "swing_Hz",
              "fewer than "
                  + shown(FEWEST_SWINGS)
                  + " swings in "
                  + shown(level.number("hold_s"))
                  + " s",
              "Hold for longer"));
    }
  }

  private static boolean isCrank(Section step) {
    return step.text("kind").equals(StepKeys.word(Step.Kind.CRANK));
  }

  private static List<Section> judged(Section step) {
    return step.each("levels").stream().filter(l -> l.flag("judged", true)).toList();
  }
}
