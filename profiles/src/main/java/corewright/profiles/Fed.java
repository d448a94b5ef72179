package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import java.util.Locale;
import java.util.function.Consumer;

/** Whether the supply of a step feeds a good unit: one that is cut off sags as a weak unit does. */
final class Fed {
  /** A good converter of this trade gives at least this share of what it takes, at full load. */
  static final double WORST_EFFICIENCY = 0.72;

  private Fed() {}

  /**
   * @param mean_A load on the whole, A
   * @param input_V the lowest input that it is drawn at, V
   */
  static void enough(
      ProfileDraft draft, Section step, double mean_A, double input_V, Consumer<Mistake> found) {
    double need_A = mean_A * draft.family().output_V() / WORST_EFFICIENCY / input_V;
    if (step.number("inputLimit_A") < need_A) {
      found.accept(
          step.mistake(
              "inputLimit_A",
              String.format(
                  Locale.ROOT,
                  "%s A cuts the supply off: a good unit may need %.1f A here",
                  shown(step.number("inputLimit_A")),
                  need_A),
              "Write more than that"));
    }
  }

  /** Below its zones nothing is said about a unit. */
  static void good(ProfileDraft draft, Section step, Consumer<Mistake> found) {
    if (step.number("input_V") < draft.good_V()) {
      found.accept(
          step.mistake(
              "input_V",
              "with " + shown(step.number("input_V")) + " V the input is no good one",
              "Write at least " + shown(draft.good_V())));
    }
  }
}
