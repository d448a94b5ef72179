package corewright.bench.log;

import corewright.bench.log.made.MadeLog;
import corewright.bench.log.made.Turn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Holds the reading of a made log against what really happened. */
final class MadeCheck {
  private MadeCheck() {}

  /**
   * How it went.
   *
   * @param right the conclusion is the one of the story; a log that may not be read was refused
   * @param wrongWay it speaks for a fault or for the module where it must not
   * @param wrongNumbers readings that are not what the vehicle did
   */
  record Outcome(boolean right, boolean wrongWay, List<String> wrongNumbers, String words) {}

  static Outcome of(MadeLog log, Optional<LogReading> reading) {
    if (reading.isEmpty()) {
      return new Outcome(!log.readable(), false, List.of(), "refused");
    }
    if (!log.readable()) {
      return new Outcome(false, true, List.of("a time out of frames"), "read without a rate");
    }
    String came = reading.get().conclusion().id();
    String wanted = log.story().conclusion();
    boolean speaks = came.startsWith("supports");
    return new Outcome(
        came.equals(wanted),
        speaks && !came.equals(wanted),
        wrongNumbers(log, reading.get()),
        came + ": " + reading.get().reasons().get(0));
  }

  private static List<String> wrongNumbers(MadeLog log, LogReading reading) {
    List<String> wrong = new ArrayList<>();
    for (Crank crank : reading.cranks()) {
      Optional<Turn> turn = nearest(log, crank);
      if (turn.isEmpty()) {
        wrong.add("a crank at " + crank.start_s() + " s");
      } else {
        compare(log, crank, turn.get(), wrong);
      }
    }
    return wrong;
  }

  /**
   * The turn that overlaps; clocks count from the first row that was logged, so that is taken off.
   */
  private static Optional<Turn> nearest(MadeLog log, Crank crank) {
    double slack_s = 1.2 + 3 / log.poll().rate_Hz();
    return log.vehicle().turns().stream()
        .filter(t -> Math.abs(crank.start_s() - t.at_s()) < slack_s)
        .filter(t -> Math.abs(crank.end_s() - t.at_s() - t.length_s()) < slack_s)
        .findFirst();
  }

  private static void compare(MadeLog log, Crank crank, Turn turn, List<String> wrong) {
    double k = log.vehicle().nominal_V() / 48;
    double step_V = log.poll().outputStep_V();
    for (Supply s : crank.supplies()) {
      double lowest_V = turn.plateau_V() - Turn.RIPPLE_V;
      s.minimum()
          .ifPresent(m -> near(wrong, "supply", m.value(), lowest_V, 0.1 + 2 * Turn.RIPPLE_V));
      s.rest()
          .ifPresent(
              m ->
                  near(
                      wrong,
                      "supply at rest",
                      m.value(),
                      log.vehicle().supply_V(turn.at_s() - 0.01),
                      0.15));
    }
    for (Output o : crank.outputs()) {
      o.rest()
          .ifPresent(
              m -> near(wrong, "rest", m.value(), log.vehicle().output_V(0), 0.12 * k + step_V));
      if (crank.window().isEmpty() || o.samples() < 3) {
        continue;
      }
      double slope_V_s = slope(turn);
      double late_s = 1.5 / log.poll().rate_Hz() + 0.4;
      double tolerance_V = 0.2 * k + step_V + Math.abs(slope_V_s) * late_s;
      o.lowestQuarter()
          .ifPresent(m -> near(wrong, "lowest quarter", m.value(), lowest(turn), tolerance_V));
      double span_s = crank.window().get().length_s();
      o.drift()
          .ifPresent(
              m ->
                  near(
                      wrong,
                      "drift",
                      m.value(),
                      60 * slope_V_s,
                      60 * (0.3 * Math.abs(slope_V_s) + (0.25 * k + step_V) / span_s)));
    }
  }

  private static double slope(Turn turn) {
    return (turn.output().applyAsDouble(turn.length_s()) - turn.output().applyAsDouble(0))
        / turn.length_s();
  }

  /** The median of the lowest quarter of what really was, inrush and release left out. */
  private static double lowest(Turn turn) {
    double[] all = new double[400];
    for (int i = 0; i < all.length; i++) {
      all[i] = turn.output().applyAsDouble(0.5 + (turn.length_s() - 0.8) * i / (all.length - 1));
    }
    Arrays.sort(all);
    return all[all.length / 8];
  }

  private static void near(
      List<String> wrong, String what, double came, double wanted, double tolerance) {
    if (!(Math.abs(came - wanted) <= tolerance)) {
      wrong.add(what + " is " + came + " and not " + wanted + " ± " + tolerance);
    }
  }
}
