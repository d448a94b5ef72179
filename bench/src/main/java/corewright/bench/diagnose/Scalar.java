package corewright.bench.diagnose;

import static corewright.bench.diagnose.Look.in_W;
import static corewright.bench.diagnose.Look.load_A;
import static corewright.bench.diagnose.Look.out_W;

import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A trait that is one number, which is held against healthy siblings.
 *
 * @param value in the trait's unit
 * @param hold where it was read
 */
record Scalar(double value, MeasuredHold hold) {
  private static final double LEAST_STEP = 0.1;
  private static final double LEAST_OUTPUT = 0.15;
  private static final double LEAST_FALL = 0.001;

  /** The trait of this run; empty where it cannot be read. */
  static Optional<Scalar> of(Trait trait, Look look) {
    return switch (trait) {
      case STEP_FROM_REST -> deepest(look, look::atRest);
      case STEP_UNDER_LOAD -> deepest(look, look::carries);
      case RINGING -> ringing(look);
      case IDLE -> idle(look);
      case LOSS -> loss(look);
      default -> Optional.empty();
    };
  }

  /** The deepest fall for each ampere of step, on nominal input, where the output is held after. */
  private static Optional<Scalar> deepest(Look look, Predicate<MeasuredHold> before) {
    List<MeasuredHold> holds = look.holds();
    return Stream.iterate(1, i -> i < holds.size(), i -> i + 1)
        .filter(i -> before.test(holds.get(i - 1)) && rises(look, holds.get(i - 1), holds.get(i)))
        .map(i -> fall(holds.get(i - 1), holds.get(i)))
        .max(Comparator.comparingDouble(Scalar::value));
  }

  /** How far the output swings over after the first load step, in parts of its fall. */
  private static Optional<Scalar> ringing(Look look) {
    return deepest(look, look::atRest)
        .map(Scalar::hold)
        .filter(h -> h.value(Quantity.OVERSHOOT).isPresent())
        .filter(h -> Look.value(h, Quantity.UNDERSHOOT) > LEAST_FALL * look.family().output_V())
        .map(
            h ->
                new Scalar(
                    Look.value(h, Quantity.OVERSHOOT) / Look.value(h, Quantity.UNDERSHOOT), h));
  }

  private static Scalar fall(MeasuredHold before, MeasuredHold h) {
    return new Scalar(Look.value(h, Quantity.UNDERSHOOT) / (load_A(h) - load_A(before)), h);
  }

  private static boolean rises(Look look, MeasuredHold before, MeasuredHold h) {
    return look.nominalLine(h)
        && look.nominalLine(before)
        && look.regulated(h)
        && h.value(Quantity.UNDERSHOOT).isPresent()
        && load_A(h) - load_A(before) > LEAST_STEP * look.family().ratedLoad_A();
  }

  /** Power taken at rest, W. */
  private static Optional<Scalar> idle(Look look) {
    return look.rest()
        .filter(h -> look.atRest(h) && look.regulated(h))
        .filter(h -> h.value(Quantity.INPUT_CURRENT).isPresent())
        .map(h -> new Scalar(in_W(h), h));
  }

  /** Part lost of each further watt that goes in, %. */
  private static Optional<Scalar> loss(Look look) {
    List<MeasuredHold> measured =
        look.holds().stream()
            .filter(h -> look.nominalLine(h) && h.value(Quantity.INPUT_CURRENT).isPresent())
            .filter(h -> Look.value(h, Quantity.OUTPUT) > 1.5 * Look.value(h, Quantity.INPUT))
            .sorted(Comparator.comparingDouble(Look::load_A))
            .toList();
    if (measured.size() < 2) {
      return Optional.empty();
    }
    MeasuredHold low = measured.get(0);
    MeasuredHold high = measured.get(measured.size() - 1);
    double out_W = out_W(high) - out_W(low);
    return out_W < LEAST_OUTPUT * look.rated_W()
        ? Optional.empty()
        : Optional.of(new Scalar(100 * (1 - out_W / (in_W(high) - in_W(low))), high));
  }
}
