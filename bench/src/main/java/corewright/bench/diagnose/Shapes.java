package corewright.bench.diagnose;

import static corewright.bench.diagnose.Look.at;
import static corewright.bench.diagnose.Look.reading;
import static corewright.bench.diagnose.Look.value;

import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** Signs in how the output moves: within a hold, and after a load step. */
final class Shapes {
  private static final double JUMPS = 0.012;
  private static final double BACK = 0.015;
  private static final double SWINGS = 0.25;

  /** A sine's rms is 0.35 of its peak-to-peak; that of rare jumps is much less. */
  private static final double SINE = 0.28;

  private static final double CYCLES = 0.15;
  private static final double RINGS = 0.2;

  private final Look look;
  private final Siblings siblings;

  Shapes(Look look, Siblings siblings) {
    this.look = look;
    this.siblings = siblings;
  }

  Stream<Seen> seen() {
    return Stream.of(shape(), stepFromRest(), stepUnderLoad(), ringing()).flatMap(Optional::stream);
  }

  private Optional<Seen> shape() {
    return look.loaded().stream()
        .filter(h -> h.value(Quantity.RIPPLE_PEAK_TO_PEAK).isPresent() && look.inputStays(h))
        .max(Comparator.comparing(this::cycles).thenComparingDouble(this::unexplained_V))
        .map(
            h ->
                new Seen(
                    shape(h),
                    "within one hold the output moves by "
                        + reading(h, Quantity.RIPPLE_PEAK_TO_PEAK)
                        + at(h)));
  }

  private Sign shape(MeasuredHold h) {
    double nominal_V = look.family().output_V();
    if (cycles(h)) {
      return Sign.SHAPE_CYCLES;
    }
    if (unexplained_V(h) < JUMPS * nominal_V) {
      return Sign.SHAPE_SMOOTH;
    }
    if (swings(h)) {
      return Sign.SHAPE_SWINGS;
    }
    return highest_V(h) > rest_V() - BACK * nominal_V ? Sign.SHAPE_JUMPS : Sign.SHAPE_SLIDES;
  }

  /** It breaks down and comes back within one hold: one such hold outweighs all others. */
  private boolean cycles(MeasuredHold h) {
    double nominal_V = look.family().output_V();
    return value(h, Quantity.RIPPLE_PEAK_TO_PEAK) > CYCLES * nominal_V && !look.regulated(h);
  }

  /** As much above its mean as below, and above the level that it has at rest. */
  private boolean swings(MeasuredHold h) {
    double swing_V = value(h, Quantity.RIPPLE_PEAK_TO_PEAK);
    return value(h, Quantity.RIPPLE_RMS) > SINE * swing_V
        && value(h, Quantity.OUTPUT) + swing_V / 2 > rest_V() + SWINGS * swing_V;
  }

  /** Highest level within the window, from its lowest and its swing. */
  private static double highest_V(MeasuredHold h) {
    double swing_V = value(h, Quantity.RIPPLE_PEAK_TO_PEAK);
    return swing_V
        + Math.max(value(h, Quantity.OUTPUT_MINIMUM), value(h, Quantity.OUTPUT) - swing_V);
  }

  private double rest_V() {
    return look.rest().map(r -> value(r, Quantity.OUTPUT)).orElse(0.0);
  }

  /** What neither the converter's own ripple nor a steady slide accounts for. */
  private double unexplained_V(MeasuredHold h) {
    boolean switching = value(h, Quantity.RIPPLE_FUNDAMENTAL) > 0.2 * look.family().switching_Hz();
    double ripple_V = switching ? 6 * value(h, Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE) : 0;
    double slide_V =
        Math.abs(value(h, Quantity.DRIFT)) / 60 * (h.windowEnd_s() - h.windowStart_s());
    return value(h, Quantity.RIPPLE_PEAK_TO_PEAK) - ripple_V - slide_V - rest_Vpp();
  }

  /** What the output moves by without load is noise of the channel, or of an idle converter. */
  private double rest_Vpp() {
    return look.rest().map(r -> value(r, Quantity.RIPPLE_PEAK_TO_PEAK)).orElse(0.0);
  }

  private Optional<Seen> stepFromRest() {
    return step(
        Trait.STEP_FROM_REST, Sign.STEP_FROM_REST_NORMAL, Sign.STEP_FROM_REST_DEEP, "from rest");
  }

  private Optional<Seen> stepUnderLoad() {
    return step(
        Trait.STEP_UNDER_LOAD,
        Sign.STEP_UNDER_LOAD_NORMAL,
        Sign.STEP_UNDER_LOAD_DEEP,
        "under load");
  }

  private Optional<Seen> step(Trait trait, Sign normal, Sign deep, String where) {
    return siblings
        .of(trait)
        .flatMap(
            healthy ->
                Scalar.of(trait, look)
                    .map(
                        fall ->
                            new Seen(
                                healthy.exceeds(fall.value(), 5, 1.12) ? deep : normal,
                                "after a load step "
                                    + where
                                    + " the output gives way by "
                                    + reading(fall.hold(), Quantity.UNDERSHOOT)
                                    + at(fall.hold())
                                    + ", "
                                    + healthy.words(fall.value(), 2, "V/A"))));
  }

  private Optional<Seen> ringing() {
    return siblings
        .of(Trait.RINGING)
        .flatMap(healthy -> Scalar.of(Trait.RINGING, look).map(part -> ringing(part, healthy)));
  }

  private static Seen ringing(Scalar part, Siblings.Spread healthy) {
    double more = part.value() - healthy.median();
    return new Seen(
        more > Math.max(RINGS, 5 * healthy.deviation()) ? Sign.RINGING_MUCH : Sign.RINGING_LITTLE,
        "after the first load step the output swings over by "
            + Figures.number(100 * part.value(), 0)
            + " % of its fall, healthy siblings by "
            + Figures.number(100 * healthy.median(), 0)
            + " %");
  }
}
