package corewright.bench.log.made;

import java.util.List;
import java.util.Random;

/** Vehicles of a 48 V family that tests tell stories about. All turn the starter from 5 s on. */
public final class Vehicles {
  public static final double AT_S = 5;
  public static final double LENGTH_S = 5.2;

  private Vehicles() {}

  /** Its output falls by 1.1 V/s with a good supply. */
  public static Vehicle failing() {
    return one(10.5, t -> 47.6 - 1.1 * t, false);
  }

  /** Its output stays at 47.5 V with a good supply. */
  public static Vehicle good() {
    return one(10.5, t -> 47.5, false);
  }

  /** Its output falls because the supply lies about {@code plateau_V}. */
  public static Vehicle fedWith(double plateau_V) {
    return one(plateau_V, t -> 47.6 - 1.1 * t, false);
  }

  /** A good one whose engine runs after {@code length_s}. */
  public static Vehicle startsIn(double length_s) {
    return new Vehicle(
        48, 12.5, 15, true, List.of(new Turn(AT_S, length_s, 10.5, t -> 47.5, true)));
  }

  /** Failing cold, good half a minute later. */
  public static Vehicle coldBadWarmGood() {
    return new Vehicle(
        48,
        12.5,
        50,
        true,
        List.of(
            new Turn(AT_S, LENGTH_S, 10.5, t -> 47.6 - 1.1 * t, false),
            new Turn(AT_S + 30, LENGTH_S, 10.5, t -> 47.5, false)));
  }

  public static Vehicle one(
      double plateau_V, java.util.function.DoubleUnaryOperator output, boolean starts) {
    return new Vehicle(
        48, 12.5, 16, true, List.of(new Turn(AT_S, LENGTH_S, plateau_V, output, starts)));
  }

  /** A vehicle of another family: everything scaled, two batteries above 100 V. */
  public static Vehicle ofFamily(double nominal_V, Story story) {
    return story.vehicle(nominal_V, 4, new Random(1));
  }
}
