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

  /** A rise above rest that only a generator makes, V at 12 V. */
  private static final double CHARGED_V = 0.4;

  /** Share of its fall that the supply has made good once the starter is let go. */
  private static final double BACK = 0.6;

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
            : new Window(
                start_s + LogRule.INRUSH_S,
                Math.min(
                    Math.min(attempt.end_s() - LogRule.RELEASE_S, middle_s(attempt)),
                    nearestSupply
                        .map(s -> Math.min(charges_s(s, start_s), letGo_s(s, start_s, attempt)))
                        .orElse(Double.MAX_VALUE)));
    boolean longEnough =
        person
            || (attempt.length_s() >= LogRule.SHORTEST_S && attempt.end() != Attempt.End.TOO_LONG);
    return new Bounds(
        start_s,
        middle_s(attempt),
        longEnough && judged.length_s() > 0 ? Optional.of(judged) : Optional.empty());
  }

  /** Where it ended can only be told to lie between two samples. */
  private static double middle_s(Attempt attempt) {
    return (attempt.last_s() + attempt.end_s()) / 2;
  }

  /** A supply above its rest is charged: the engine runs, whatever the slower speed still says. */
  private static double charges_s(Series supply, double start_s) {
    double rest_V = Stats.median(supply.within(start_s - REST_S, start_s - 1e-9).sorted());
    double charged_V = rest_V + CHARGED_V * (rest_V > 18 ? 2 : 1);
    for (int i = 0; i < supply.size(); i++) {
      if (supply.t_s(i) > start_s && supply.value(i) > charged_V) {
        return supply.t_s(i) - 1e-9;
      }
    }
    return Double.MAX_VALUE;
  }

  /**
   * The supply comes back when the starter is let go, the engine turns on for a moment: what lies
   * after that is no crank any more.
   */
  private static double letGo_s(Series supply, double start_s, Attempt attempt) {
    double rest_V = Stats.median(supply.within(start_s - REST_S, start_s - 1e-9).sorted());
    Series crank = supply.within(start_s + LogRule.INRUSH_S, attempt.last_s());
    double level_V = Stats.median(crank.sorted());
    double deep_V = rest_V - level_V;
    if (!(deep_V >= 2 * FALL_V * (rest_V > 18 ? 2 : 1))) {
      return Double.MAX_VALUE; // too shallow to tell, or not known
    }
    int i = crank.size();
    while (i > 0 && crank.value(i - 1) > level_V + BACK * deep_V) {
      i--;
    }
    return i < crank.size() ? crank.t_s(i) - 1e-9 : Double.MAX_VALUE;
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
