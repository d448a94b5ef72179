package corewright.bench.log;

import java.util.Optional;

/**
 * Where a crank lies and which part of it is judged.
 *
 * @param start_s first drop of the supply; first sign of the crank where there is no supply, s
 * @param end_s middle between its last sample and the first after it, s
 * @param judged without the inrush at its beginning and the release at its end; empty if nothing is
 *     left
 */
record Bounds(double start_s, double end_s, Optional<Window> judged) {
  /** The supply can fall this long before the first sign of speed: a slow log, a first turn, s. */
  private static final double AHEAD_S = 2;

  /** Before the crank the supply rests for this long, s. */
  private static final double REST_S = 5;

  /** A fall of the supply that is no ripple, V at 12 V. */
  private static final double FALL_V = 0.5;

  static Bounds of(Attempt attempt, Optional<Series> nearestSupply) {
    boolean bySpeed = attempt.foundBy() == Attempt.FoundBy.SPEED;
    double start_s =
        bySpeed
            ? nearestSupply.map(s -> firstFall_s(s, attempt.begin_s())).orElse(attempt.begin_s())
            : attempt.begin_s();
    boolean person = attempt.foundBy() == Attempt.FoundBy.PERSON;
    Window judged =
        person
            ? new Window(attempt.begin_s(), attempt.end_s())
            : new Window(start_s + LogRule.INRUSH_S, attempt.end_s() - LogRule.RELEASE_S);
    boolean longEnough =
        person
            || (attempt.length_s() >= LogRule.SHORTEST_S && attempt.end() != Attempt.End.TOO_LONG);
    return new Bounds(
        start_s,
        (attempt.last_s() + attempt.end_s()) / 2,
        longEnough && judged.length_s() > 0 ? Optional.of(judged) : Optional.empty());
  }

  private static double firstFall_s(Series supply, double begin_s) {
    double rest_V = Stats.median(supply.within(begin_s - REST_S, begin_s - 1e-9).sorted());
    if (Double.isNaN(rest_V)) {
      return begin_s;
    }
    double fallen_V = rest_V - FALL_V * (rest_V > 18 ? 2 : 1);
    double start_s = begin_s;
    for (int i = supply.size() - 1; i >= 0; i--) {
      double t_s = supply.t_s(i);
      if (t_s >= begin_s) {
        continue;
      }
      if (t_s < begin_s - AHEAD_S || supply.value(i) > fallen_V) {
        break;
      }
      start_s = t_s;
    }
    return start_s;
  }
}
