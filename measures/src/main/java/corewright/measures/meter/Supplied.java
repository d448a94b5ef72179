package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import java.util.Optional;

/** What the unit is given: the input current, and how much of the input power comes out again. */
final class Supplied {
  /** Below this part of an ampere the efficiency is the quotient of two small numbers. */
  private static final double LEAST_A = 0.05;

  private Supplied() {}

  /** Needs output, load and input of the same hold among {@code readings}. */
  static void read(Optional<Channel> current, Window window, Readings readings) {
    Optional<String> unread =
        current.isEmpty() ? Optional.of("the input current was not recorded") : window.unread();
    if (unread.isPresent()) {
      readings.none(unread.get(), Quantity.INPUT_CURRENT, Quantity.EFFICIENCY);
      return;
    }
    Level level = current.orElseThrow().level(window);
    Measurement in_A = current.orElseThrow().absolute(level.mean(), level.uMean());
    readings.put(Quantity.INPUT_CURRENT, in_A);
    readings.put(Quantity.EFFICIENCY, efficiency(in_A, readings));
  }

  private static Reading efficiency(Measurement in_A, Readings readings) {
    Optional<Measurement> in_V = readings.measured(Quantity.INPUT);
    Optional<Measurement> out_V = readings.measured(Quantity.OUTPUT);
    Optional<Measurement> out_A = readings.measured(Quantity.LOAD);
    if (in_V.isEmpty() || out_V.isEmpty() || out_A.isEmpty()) {
      return Reading.none("input, output or load was not read");
    }
    if (out_A.get().value() < LEAST_A || in_A.value() < LEAST_A) {
      return Reading.none("next to no power passes");
    }
    double part = out_V.get().value() * out_A.get().value() / (in_V.get().value() * in_A.value());
    double u = Root.of(relative(out_V), relative(out_A), relative(in_V), in_A.u() / in_A.value());
    return Reading.of(100 * part, 100 * part * u, Unit.PERCENT);
  }

  private static double relative(Optional<Measurement> m) {
    return m.map(x -> x.u() / x.value()).orElse(0.0);
  }
}
