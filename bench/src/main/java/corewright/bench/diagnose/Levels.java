package corewright.bench.diagnose;

import static corewright.bench.diagnose.Look.at;
import static corewright.bench.diagnose.Look.load_A;
import static corewright.bench.diagnose.Look.reading;
import static corewright.bench.diagnose.Look.value;

import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Signs in the steady levels. Bounds are the trade's judgement, wide of what siblings differ by.
 */
final class Levels {
  private static final double REST_BAND = 0.012;
  private static final double ABSENT = 0.04;
  private static final double SAG = 0.015;
  private static final double EARLY = 0.85;
  private static final double FALL_PER_MINUTE = 0.02;
  private static final double AFTER = 0.004;
  private static final double SLIDE = 0.2;
  private static final double SETTLED_S = 0.2;

  private final Look look;

  Levels(Look look) {
    this.look = look;
  }

  Stream<Seen> seen() {
    return Stream.of(rest(), after(), sag(), line(), drift()).flatMap(Optional::stream);
  }

  private Optional<Seen> rest() {
    return look.rest()
        .map(h -> new Seen(level(h), "at rest the output is " + reading(h, Quantity.OUTPUT)));
  }

  private Sign level(MeasuredHold h) {
    double v = value(h, Quantity.OUTPUT);
    double nominal_V = look.family().output_V();
    if (v < ABSENT * nominal_V) {
      return Sign.REST_ABSENT;
    }
    if (v < value(h, Quantity.INPUT) + 0.5 || (!look.regulated(h) && throughUnderLoad())) {
      return Sign.REST_THROUGH;
    }
    if (v < nominal_V * (1 - REST_BAND)) {
      return Sign.REST_LOW;
    }
    return v > nominal_V * (1 + REST_BAND) ? Sign.REST_HIGH : Sign.REST_NORMAL;
  }

  /** What is left of a charge may stand at rest; under every load the input comes through. */
  private boolean throughUnderLoad() {
    List<MeasuredHold> loaded = look.loaded().stream().filter(look::nominalLine).toList();
    return !loaded.isEmpty() && loaded.stream().allMatch(look::passesThrough);
  }

  /** A last rest lower than the first: what sets the level has warmed up with the unit. */
  private Optional<Seen> after() {
    Optional<MeasuredHold> first = look.rest().filter(look::regulated);
    Optional<MeasuredHold> last =
        look.holds().stream()
            .filter(h -> look.atRest(h) && look.regulated(h))
            .filter(h -> h.windowEnd_s() - h.windowStart_s() > SETTLED_S)
            .reduce((a, b) -> b);
    if (first.isEmpty() || last.isEmpty() || last.get().index() == first.get().index()) {
      return Optional.empty();
    }
    double fall = value(first.get(), Quantity.OUTPUT) - value(last.get(), Quantity.OUTPUT);
    return Optional.of(
        new Seen(
            fall > AFTER * look.family().output_V() ? Sign.AFTER_LOWER : Sign.AFTER_SAME,
            "at rest after the load the output is "
                + reading(last.get(), Quantity.OUTPUT)
                + ", before it was "
                + reading(first.get(), Quantity.OUTPUT)));
  }

  private Optional<Seen> sag() {
    Optional<MeasuredHold> rest = look.rest().filter(look::regulated);
    List<MeasuredHold> loaded = look.loaded();
    if (rest.isEmpty() || loaded.isEmpty()) {
      return Optional.empty();
    }
    double held_V = value(rest.get(), Quantity.OUTPUT) - SAG * look.family().output_V();
    Optional<MeasuredHold> nominal =
        loaded.stream()
            .filter(h -> look.nominalLine(h) && value(h, Quantity.OUTPUT) < held_V)
            .min(Comparator.comparingDouble(Look::load_A));
    if (nominal.isPresent()) {
      boolean early = load_A(nominal.get()) < EARLY * look.family().ratedLoad_A();
      return Optional.of(
          new Seen(
              early ? Sign.SAG_EARLY : Sign.SAG_LATE,
              "the output falls to "
                  + reading(nominal.get(), Quantity.OUTPUT)
                  + at(nominal.get())));
    }
    return loaded.stream()
        .filter(h -> value(h, Quantity.OUTPUT) < held_V)
        .min(Comparator.comparingDouble(Look::load_A))
        .map(
            h ->
                new Seen(
                    Sign.SAG_LOW_LINE,
                    "with the input at "
                        + reading(h, Quantity.INPUT)
                        + " the output falls to "
                        + reading(h, Quantity.OUTPUT)
                        + at(h)))
        .or(() -> Optional.of(new Seen(Sign.SAG_NONE, "the output holds at every load")));
  }

  /** What held at nominal input comes down to the input where that is lowered. */
  private Optional<Seen> line() {
    List<MeasuredHold> low = look.holds().stream().filter(h -> !look.nominalLine(h)).toList();
    boolean heldBefore =
        look.loaded().stream().anyMatch(h -> look.nominalLine(h) && look.regulated(h));
    boolean lostBefore = look.loaded().stream().anyMatch(h -> look.nominalLine(h) && lost(h));
    if (low.isEmpty() || !heldBefore || lostBefore) {
      return Optional.empty();
    }
    return low.stream()
        .filter(this::lost)
        .min(Comparator.comparing((MeasuredHold h) -> !look.atRest(h)))
        .map(
            h ->
                new Seen(
                    look.atRest(h) ? Sign.LINE_LOST_AT_REST : Sign.LINE_LOST_LOADED,
                    "with the input at "
                        + reading(h, Quantity.INPUT)
                        + " no more than the input comes through"
                        + at(h)))
        .or(() -> Optional.of(new Seen(Sign.LINE_KEPT, "with the input lowered it still works")));
  }

  /** For a moment at least the converter did not switch. */
  private boolean lost(MeasuredHold h) {
    return look.passesThrough(h)
        || h.value(Quantity.OUTPUT_MINIMUM)
            .filter(v -> v.value() < value(h, Quantity.INPUT) + 0.5)
            .isPresent();
  }

  private Optional<Seen> drift() {
    return look.loaded().stream()
        .filter(h -> h.value(Quantity.DRIFT).isPresent() && look.inputStays(h))
        .filter(h -> h.windowEnd_s() - h.windowStart_s() > SETTLED_S)
        .min(Comparator.comparingDouble(h -> value(h, Quantity.DRIFT)))
        .map(
            h ->
                new Seen(
                    falls(h) ? Sign.DRIFT_FALLING : Sign.DRIFT_LEVEL,
                    "within the hold it drifts by " + reading(h, Quantity.DRIFT) + at(h)));
  }

  /** By more than the drift's own uncertainty, and as a slide: not one among wider swings. */
  private boolean falls(MeasuredHold h) {
    double slide_V =
        Math.abs(value(h, Quantity.DRIFT)) / 60 * (h.windowEnd_s() - h.windowStart_s());
    return slide_V > SLIDE * value(h, Quantity.RIPPLE_PEAK_TO_PEAK)
        && h.value(Quantity.DRIFT)
            .filter(m -> m.value() + 2 * m.u() < -FALL_PER_MINUTE * look.family().output_V())
            .isPresent();
  }
}
