package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** What a profile must keep about a pulsed load and a burst. */
final class PulseRules {
  /** The rest of the time is the level that a dip is taken from. */
  private static final double MOST_OF_THE_TIME = 0.5;

  /** A dip is a median: of fewer it is none (common practice, no source). */
  private static final int FEWEST_PULSES = 20;

  /** At a slower rate nothing but the dip is read of them. */
  private static final int FEWEST_SLOW = 10;

  /** The step of the series resistance is over within one sample of a slower digitizer. */
  private static final double LEAST_RATE_HZ = 100_000;

  /** Five times the bandwidth that a burst is stated in. */
  private static final double LEAST_BURST_HZ = 1_500_000;

  private static final int FEWEST_IN_A_PULSE = 16;

  private PulseRules() {}

  static void pulses(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : of(draft, "pulses").toList()) {
      load(draft, step, found);
      seen(draft, step, found);
    }
  }

  /** What any load that pulses keeps. */
  static void load(ProfileDraft draft, Section step, Consumer<Mistake> found) {
    double low = step.number("load_A", 0);
    double high = step.number("pulse_A");
    double width_s = step.number("width_s");
    double rate_Hz = step.number("rate_Hz");
    if (high <= low) {
      found.accept(
          step.mistake(
              "pulse_A",
              "a pulse of " + shown(high) + " A is none above " + shown(low) + " A",
              "Write more than load_A"));
    }
    if (width_s * rate_Hz >= MOST_OF_THE_TIME) {
      found.accept(
          step.mistake(
              "width_s",
              "pulses of " + shown(width_s) + " s, " + shown(rate_Hz) + " a second, leave no rest",
              "Write less than " + shown(Math.floor(1e6 * MOST_OF_THE_TIME / rate_Hz) / 1e6)));
    }
    double mean = mean_A(step);
    if (mean > draft.family().ratedLoad_A()) {
      found.accept(
          step.mistake(
              "pulse_A",
              String.format(
                  Locale.ROOT,
                  "the pulses take %.3f A on the whole, above the rated load of %s, %s A",
                  mean,
                  draft.family().id(),
                  shown(draft.family().ratedLoad_A())),
              "Write less, or fewer or shorter pulses"));
    }
  }

  /** Enough samples in a pulse and enough pulses in the step. */
  private static void seen(ProfileDraft draft, Section step, Consumer<Mistake> found) {
    double least_Hz = Math.max(LEAST_RATE_HZ, FEWEST_IN_A_PULSE / step.number("width_s"));
    if (step.number("sampleRate_Hz") < least_Hz) {
      found.accept(
          step.mistake(
              "sampleRate_Hz",
              "with "
                  + shown(step.number("sampleRate_Hz"))
                  + " samples a second neither capacitance nor series resistance is told",
              "Write at least " + shown(Math.ceil(least_Hz))));
    }
    double judged_s = step.number("hold_s") - draft.file().number("settle_s", 0);
    if (judged_s * step.number("rate_Hz") < FEWEST_PULSES) {
      found.accept(
          step.mistake(
              "hold_s",
              "fewer than " + FEWEST_PULSES + " pulses follow on settle_s",
              "Hold for longer"));
    }
  }

  /** Each rate lies above the one before it, and shows enough pulses for a median. */
  static void slower(ProfileDraft draft, Consumer<Mistake> found) {
    double settle_s = draft.file().number("settle_s", 0);
    for (Section step : of(draft, "pulses").toList()) {
      double most_Hz = step.number("rate_Hz");
      String above = "rate_Hz";
      for (String word : List.of(SlowPulses.IDLE.word(), SlowPulses.CRANKING.word())) {
        if (!step.has(word)) {
          continue;
        }
        Section slow = step.at(word);
        double rate_Hz = slow.number("rate_Hz");
        if (rate_Hz >= most_Hz) {
          found.accept(
              slow.mistake(
                  "rate_Hz",
                  shown(rate_Hz) + " pulses a second are not slower than " + above,
                  "Write less than " + shown(most_Hz)));
        }
        if ((slow.number("hold_s") - settle_s) * rate_Hz < FEWEST_SLOW) {
          found.accept(
              slow.mistake(
                  "hold_s",
                  "fewer than " + FEWEST_SLOW + " pulses follow on settle_s",
                  "Hold for longer"));
        }
        most_Hz = Math.min(most_Hz, rate_Hz);
        above = word;
      }
    }
  }

  /** A limit at a rate that the step does not pulse at would never be asked. */
  static void slowerIsGiven(ProfileDraft draft, Consumer<Mistake> found) {
    for (SlowPulses rate : SlowPulses.values()) {
      boolean pulsed = of(draft, "pulses").anyMatch(step -> !step.has(rate.word()));
      for (Section limit : draft.limits()) {
        if (pulsed && LimitRules.quantity(limit).filter(rate.yields()::contains).isPresent()) {
          found.accept(
              limit.mistake(
                  "quantity",
                  "no step of this profile reads '" + limit.text("quantity") + "'",
                  "Add \"" + rate.word() + "\" to the step of kind pulses"));
        }
      }
    }
  }

  /** What a burst states is stated in a bandwidth, and its pole needs five samples. */
  static void bursts(ProfileDraft draft, Consumer<Mistake> found) {
    for (Section step : of(draft, "burst").toList()) {
      if (step.number("sampleRate_Hz") < LEAST_BURST_HZ) {
        found.accept(
            step.mistake(
                "sampleRate_Hz",
                "ripple below 300 kHz is not told with "
                    + shown(step.number("sampleRate_Hz"))
                    + " samples a second",
                "Write at least " + shown(LEAST_BURST_HZ)));
      }
    }
  }

  /** Below its zones nothing is said about a unit, and a source that is cut off sags as one. */
  static void fed(ProfileDraft draft, Consumer<Mistake> found) {
    List<Section> steps = Stream.of("pulses", "burst").flatMap(k -> of(draft, k)).toList();
    for (Section step : steps) {
      Fed.good(draft, step, found);
      Fed.enough(draft, step, mean_A(step), step.number("input_V"), found);
    }
  }

  /** The load on the whole, A; of a step without pulses its steady one. */
  static double mean_A(Section step) {
    double low = step.number("load_A", 0);
    double more = step.number("pulse_A", low) - low;
    return low + more * step.number("width_s", 0) * step.number("rate_Hz", 0);
  }

  private static Stream<Section> of(ProfileDraft draft, String kind) {
    return draft.steps().stream().filter(s -> s.text("kind").equals(kind));
  }
}
