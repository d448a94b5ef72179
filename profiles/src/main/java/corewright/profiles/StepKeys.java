package corewright.profiles;

import corewright.measures.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What each kind of step takes beyond the levels and times that all of them know, and what is read
 * of the run in it. To add a kind: its line here.
 *
 * @param more keys that this kind takes and others do not
 * @param yields readings of the run that only this kind gives
 */
record StepKeys(Set<String> more, Set<Quantity> yields) {
  /** Keys that are not for every kind. */
  static final List<String> SOME =
      List.of("sampleRate_Hz", "to_V", "ramp_VperS", "levels", "repeats", "quantity", "needed");

  /** What a person reads where the bench cannot. */
  static final Set<Quantity> BY_HAND =
      Set.of(
          Quantity.PIN_MISMATCHES,
          Quantity.INSULATION,
          Quantity.KEY_OFF_CURRENT,
          Quantity.TAP_STEP,
          Quantity.COLD_OUTPUT,
          Quantity.HOT_OUTPUT);

  private static final StepKeys PLAIN = new StepKeys(Set.of(), Set.of());

  private static final Map<Step.Kind, StepKeys> OF =
      Map.of(
          Step.Kind.START,
          of(
              List.of(),
              Quantity.START_RISE,
              Quantity.START_OVERSHOOT,
              Quantity.INRUSH,
              Quantity.INRUSH_I2T),
          Step.Kind.QUIESCENT,
          of(List.of(), Quantity.NO_LOAD_CURRENT),
          Step.Kind.LINES,
          of(List.of("levels"), Quantity.LINE_LOWEST, Quantity.LINE_HIGHEST, Quantity.LINE_EFFECT),
          Step.Kind.LOCK_OUT,
          of(
              List.of("to_V", "ramp_VperS"),
              Quantity.LOCK_OUT_OFF,
              Quantity.LOCK_OUT_ON,
              Quantity.LOCK_OUT_HYSTERESIS),
          Step.Kind.HIGH_LINE,
          of(List.of(), Quantity.HIGH_LINE_OUTPUT, Quantity.HIGH_LINE_LOWEST),
          Step.Kind.CRANK,
          of(
              List.of("levels", "repeats"),
              Quantity.CRANK_OUTPUT,
              Quantity.CRANK_LOWEST,
              Quantity.CRANK_DRIFT,
              Quantity.CRANK_SPREAD,
              Quantity.CRANK_INPUT),
          Step.Kind.THERMAL,
          of(List.of(), Quantity.THERMAL_DRIFT, Quantity.CASE_RISE),
          Step.Kind.DECAY,
          of(List.of(), Quantity.DECAY_HALF),
          Step.Kind.BY_HAND,
          new StepKeys(Set.of("quantity", "needed"), Set.of()));

  /** Every kind that samples at its own rate may say so. */
  private static StepKeys of(List<String> more, Quantity... yields) {
    Set<String> keys = new java.util.TreeSet<>(more);
    keys.add("sampleRate_Hz");
    return new StepKeys(Set.copyOf(keys), Set.of(yields));
  }

  static StepKeys of(Step.Kind kind) {
    return OF.getOrDefault(kind, PLAIN);
  }

  /** As the JSON writes it; empty for a word that names none. */
  static Optional<Step.Kind> kind(String word) {
    return Arrays.stream(Step.Kind.values()).filter(kind -> word(kind).equals(word)).findFirst();
  }

  /** The word of a kind in JSON. */
  static String word(Step.Kind kind) {
    StringBuilder word = new StringBuilder();
    for (String part : kind.name().split("_", -1)) {
      String low = part.toLowerCase(java.util.Locale.ROOT);
      word.append(word.isEmpty() ? low : part.charAt(0) + low.substring(1));
    }
    return word.toString();
  }

  /** The kind of step that alone gives a reading; empty where every run may show it. */
  static Optional<Step.Kind> giving(Quantity quantity) {
    return OF.entrySet().stream()
        .filter(e -> e.getValue().yields().contains(quantity))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
