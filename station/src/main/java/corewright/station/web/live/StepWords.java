package corewright.station.web.live;

import corewright.measures.Figures;
import corewright.profiles.Step;
import java.util.stream.Collectors;

/** What a step asks of the unit, in one sentence for whoever watches. */
final class StepWords {
  private StepWords() {}

  static String asks(Step step) {
    return switch (step.kind()) {
      case DEAD_CHECK -> "Nothing is on. The unit must hold no charge, and stay so.";
      case FIRST_POWER ->
          "The input rises slowly to "
              + volts(step.input_V())
              + ", with no more than "
              + Figures.number(step.inputLimit_A(), 2)
              + " A.";
      case START ->
          "The output runs down; then "
              + volts(step.input_V())
              + " are switched on at once, with no more than "
              + Figures.number(step.inputLimit_A(), 2)
              + " A.";
      case QUIESCENT -> "Nothing is taken from it: what does it draw for itself?";
      case LINES ->
          "The input goes through "
              + step.detail().levels().size()
              + " levels, up to "
              + volts(step.highest_V())
              + ".";
      case LOCK_OUT ->
          "The input goes down from "
              + volts(step.input_V())
              + " to "
              + volts(step.detail().to_V())
              + ", until it turns off, and up again.";
      case FALLING ->
          "The input falls from "
              + volts(step.input_V())
              + " to "
              + volts(step.detail().to_V())
              + " while "
              + Figures.number(step.load_A(), 2)
              + " A are taken: how far does the output hold?";
      case SURVIVAL ->
          "The input falls far down, to "
              + volts(
                  step.detail().levels().stream().mapToDouble(Step.Level::input_V).min().orElse(0))
              + ", and comes back: does it work again? That is told, not judged.";
      case CRANK ->
          "The input goes through a cranking "
              + step.detail().repeats()
              + " times, "
              + Figures.number(step.load_A(), 2)
              + " A taken"
              + step.detail()
                  .pulses()
                  .map(
                      p ->
                          ", and "
                              + Figures.number(p.rate_Hz(), 0)
                              + " times a second "
                              + Figures.number(p.high_A(), 2)
                              + " A")
                  .orElse("")
              + ".";
      case PULSES -> pulses(step, step.detail().pulses().orElseThrow());
      case DECAY -> "The input is taken away: how long does the output hold up?";
      case HOLD, HIGH_LINE, BURST, THERMAL ->
          (step.load_A() > 0
                  ? "Takes " + Figures.number(step.load_A(), 2) + " A"
                  : "Takes nothing from it")
              + " for "
              + Figures.number(step.hold_s(), 1)
              + " s, input at "
              + volts(step.input_V())
              + ".";
      case BY_HAND -> "Nothing is switched: a person reads it elsewhere, or it stays open.";
      case DISCHARGE ->
          "Everything is off. The charge goes through the resistor and must stay gone.";
    };
  }

  private static String pulses(Step step, Step.Pulses pulses) {
    String slower =
        pulses.slower().stream()
            .map(s -> rate(s.rate_Hz(), s.hold_s()) + ", then ")
            .collect(Collectors.joining());
    return "Takes pulses of "
        + Figures.number(step.highest_A(), 2)
        + " A, "
        + slower
        + rate(pulses.rate_Hz(), step.hold_s())
        + ".";
  }

  private static String rate(double rate_Hz, double hold_s) {
    return Figures.number(rate_Hz, 0) + " a second, for " + Figures.number(hold_s, 1) + " s";
  }

  private static String volts(double v) {
    return Figures.number(v, 1) + " V";
  }
}
