package corewright.bench.log;

import corewright.profiles.Family;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What judging a log needs to know of a family.
 *
 * @param output_V nominal output V₀, V
 * @param input_V nominal input, V
 * @param good_V supply at or above: valid
 * @param tolerated_V supply at or above, below good: tolerated; below: void
 */
public record LogFamily(
    String id, double output_V, double input_V, double good_V, double tolerated_V) {
  /** An output that rests further than this share from nominal is no sign of a family. */
  private static final double FAR = 0.16;

  /** Above this a vehicle has two batteries, V. */
  static final double TWO_BATTERIES_V = 18;

  public static LogFamily of(Family family) {
    return new LogFamily(
        family.id(),
        family.output_V(),
        family.input_V(),
        family.zones().good_V(),
        family.zones().tolerated_V());
  }

  /** An output whose lowest quarter lies below speaks for a fault, V. */
  public double faultBelow_V() {
    return LogRule.of(this).low_V();
  }

  /** The family whose output is nearest to what one rests at; empty where none is near. */
  static Optional<LogFamily> near(double rest_V, List<LogFamily> families) {
    return families.stream()
        .filter(f -> Math.abs(rest_V / f.output_V - 1) <= FAR)
        .min(Comparator.comparingDouble(f -> Math.abs(rest_V / f.output_V - 1)));
  }
}
