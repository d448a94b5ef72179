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
 * @param byHand the one that a person may enter where a bench cannot do it
 */
record StepKeys(Set<String> more, Set<Quantity> yields, Optional<Quantity> byHand) {
  /** Keys that are not for every kind. */
  static final List<String> SOME =
      List.of(
          "sampleRate_Hz",
          "to_V",
          "ramp_VperS",
          "levels",
          "repeats",
          "quantity",
          "needed",
          "pulse_A",
          "width_s",
          "rate_Hz",
          "rest_s",
          "cranking",
          "idle");

  /** What a person reads where the bench cannot. */
  static final Set<Quantity> BY_HAND =
      Set.of(
          Quantity.PIN_MISMATCHES,
          Quantity.INSULATION,
          Quantity.KEY_OFF_CURRENT,
          Quantity.TAP_STEP,
          Quantity.COLD_OUTPUT,
          Quantity.COLD_DIP,
          Quantity.COLD_ESR,
          Quantity.HOT_DIP,
          Quantity.HOT_KEY_OFF,
          Quantity.HOT_OUTPUT);

  private static final StepKeys PLAIN = new StepKeys(Set.of(), Set.of(), Optional.empty());

  private static final Map<Step.Kind, StepKeys> OF =
      Map.ofEntries(
          Map.entry(
              Step.Kind.START,
              of(
                  List.of(),
                  Quantity.START_RISE,
                  Quantity.START_OVERSHOOT,
                  Quantity.INRUSH,
                  Quantity.INRUSH_I2T)),
          Map.entry(Step.Kind.QUIESCENT, of(List.of(), Quantity.NO_LOAD_CURRENT)),
          Map.entry(
              Step.Kind.LINES,
              of(
                  List.of("levels"),
                  Quantity.LINE_LOWEST,
                  Quantity.LINE_HIGHEST,
                  Quantity.LINE_EFFECT)),
          Map.entry(
              Step.Kind.LOCK_OUT,
              of(
                  List.of("to_V", "ramp_VperS"),
                  Quantity.LOCK_OUT_OFF,
                  Quantity.LOCK_OUT_ON,
                  Quantity.LOCK_OUT_HYSTERESIS)),
          Map.entry(
              Step.Kind.FALLING,
              of(
                      List.of("to_V", "ramp_VperS", "needed"),
                      Quantity.HOLDS_TO,
                      Quantity.FALLING_LOWEST)
                  .orByHand(Quantity.HOLDS_TO)),
          Map.entry(
              Step.Kind.HIGH_LINE,
              of(List.of(), Quantity.HIGH_LINE_OUTPUT, Quantity.HIGH_LINE_LOWEST)),
          Map.entry(
              Step.Kind.CRANK,
              of(
                  List.of("levels", "repeats", "pulse_A", "width_s", "rate_Hz", "rest_s"),
                  Quantity.CRANK_OUTPUT,
                  Quantity.CRANK_LOWEST,
                  Quantity.CRANK_DRIFT,
                  Quantity.CRANK_SPREAD,
                  Quantity.CRANK_INPUT)),
          Map.entry(
              Step.Kind.SURVIVAL,
              of(
                  List.of("levels"),
                  Quantity.SURVIVAL_LOWEST,
                  Quantity.SURVIVAL_OUT,
                  Quantity.SURVIVAL_BACK)),
          Map.entry(Step.Kind.THERMAL, of(List.of(), Quantity.THERMAL_DRIFT, Quantity.CASE_RISE)),
          Map.entry(Step.Kind.DECAY, of(List.of(), Quantity.DECAY_HALF)),
          Map.entry(
              Step.Kind.BY_HAND,
              new StepKeys(Set.of("quantity", "needed"), Set.of(), Optional.empty())),
          Map.entry(
              Step.Kind.PULSES,
              of(
                      List.of("pulse_A", "width_s", "rate_Hz", "cranking", "idle", "needed"),
                      Quantity.PULSED_OUTPUT,
                      Quantity.PULSED_OUTPUT_CRANKING,
                      Quantity.PULSED_DIP_CRANKING,
                      Quantity.PULSED_OUTPUT_IDLE,
                      Quantity.PULSED_DIP_IDLE,
                      Quantity.PULSED_RATE,
                      Quantity.PULSED_DIP,
                      Quantity.PULSED_DIP_SPREAD,
                      Quantity.PULSED_DIP_OUTLIERS,
                      Quantity.PULSED_ALTERNATION,
                      Quantity.PULSED_RECOVERY,
                      Quantity.PULSED_CAPACITANCE,
                      Quantity.PULSED_ESR)
                  .orByHand(Quantity.PULSED_DIP)),
          Map.entry(
              Step.Kind.BURST,
              of(
                      List.of("needed"),
                      Quantity.BURST_PEAK_TO_PEAK,
                      Quantity.BURST_RMS,
                      Quantity.BURST_FUNDAMENTAL)
                  .orByHand(Quantity.BURST_PEAK_TO_PEAK)));

  /** Every kind that samples at its own rate may say so. */
  private static StepKeys of(List<String> more, Quantity... yields) {
    Set<String> keys = new java.util.TreeSet<>(more);
    keys.add("sampleRate_Hz");
    return new StepKeys(Set.copyOf(keys), Set.of(yields), Optional.empty());
  }

  /** The same, where a bench may be unable to do it. */
  private StepKeys orByHand(Quantity quantity) {
    return new StepKeys(more, yields, Optional.of(quantity));
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
