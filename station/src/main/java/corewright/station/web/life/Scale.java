package corewright.station.web.life;

import corewright.reports.ledger.Happened;
import corewright.station.web.When;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A unit's years as a scale: what happened hangs from it, above or below, and what has no room
 * beside its neighbours is told by the history alone. Lengths are those of the drawing.
 *
 * @param here stretches in which the unit was in the shop
 */
public record Scale(List<Double> ticks, List<Stretch> here, List<Mark> marks) {
  static final int WIDTH = 1326;
  private static final double EDGE = 24;
  private static final double LETTER = 8.6;
  private static final int MOST_TICKS = 60;

  /** A life that is shorter is told by the time of day. */
  private static final int HOURS = 20;

  private static final Set<String> TOLD =
      Set.of("received", "shipped", "claim opened", "claim closed", "sealed", "run ended");

  /** The unit was here. */
  public record Stretch(double from, double to) {}

  /** One thing that happened. */
  public record Mark(double x, boolean above, String anchor, String words, String more) {
    public double textX() {
      return anchor.equals("start") ? x + 7 : x - 7;
    }
  }

  static Scale of(List<Happened> history, String standing, Instant now) {
    Instant first = history.isEmpty() ? now : Instant.parse(history.get(0).at());
    Duration span = Duration.between(first, now).plusMinutes(1);
    Axis axis = new Axis(first, span);
    List<Mark> marks = new ArrayList<>();
    List<double[]> above = new ArrayList<>();
    List<double[]> below = new ArrayList<>();
    boolean today = span.toHours() < HOURS;
    String end = today ? When.time(now) + ", now" : When.day(now) + ", today";
    place(marks, above, below, axis.x(now), end, standing, true);
    for (Happened h : history) {
      if (TOLD.contains(h.kind())) {
        String more = Past.words(h);
        place(
            marks,
            above,
            below,
            axis.x(Instant.parse(h.at())),
            today ? When.time(Instant.parse(h.at())) : When.day(Instant.parse(h.at())),
            more.length() > 48 ? more.substring(0, 47) + "…" : more,
            false);
      }
    }
    return new Scale(axis.ticks(), stretches(history, axis, now), marks);
  }

  private static void place(
      List<Mark> marks,
      List<double[]> above,
      List<double[]> below,
      double x,
      String words,
      String more,
      boolean end) {
    double length = 14 + LETTER * Math.max(words.length(), more.length());
    boolean before = end || x + length > WIDTH;
    double from = before ? x - length : x;
    for (boolean up : new boolean[] {false, true}) {
      List<double[]> taken = up ? above : below;
      if (from >= 0 && taken.stream().noneMatch(t -> from < t[1] && t[0] < from + length)) {
        taken.add(new double[] {from, from + length});
        marks.add(new Mark(x, up, before ? "end" : "start", words, more));
        return;
      }
    }
  }

  private static List<Stretch> stretches(List<Happened> history, Axis axis, Instant now) {
    List<Stretch> here = new ArrayList<>();
    double from = -1;
    for (Happened h : history) {
      double x = axis.x(Instant.parse(h.at()));
      if (h.kind().equals("received") && from < 0) {
        from = x;
      } else if (Set.of("shipped", "scrapped", "harvested").contains(h.kind()) && from >= 0) {
        here.add(new Stretch(from, Math.max(x, from + 4)));
        from = -1;
      }
    }
    if (from >= 0) {
      here.add(new Stretch(from, axis.x(now)));
    }
    return here;
  }

  private record Axis(Instant first, Duration span) {
    double x(Instant at) {
      double share = (double) Duration.between(first, at).toSeconds() / span.toSeconds();
      return Math.rint(10 * (EDGE + Math.min(1, Math.max(0, share)) * (WIDTH - 2 * EDGE))) / 10;
    }

    /** Hours, days, months or years, whichever gives a scale that can be read. */
    List<Double> ticks() {
      List<Double> ticks = new ArrayList<>();
      for (Duration step :
          List.of(
              Duration.ofMinutes(10),
              Duration.ofHours(1),
              Duration.ofDays(1),
              Duration.ofDays(7),
              Duration.ofSeconds(2_629_746), // a mean month
              Duration.ofSeconds(31_556_952))) {
        if (span.dividedBy(step) <= MOST_TICKS) {
          for (Instant at = first; !at.isAfter(first.plus(span)); at = at.plus(step)) {
            ticks.add(x(at));
          }
          return ticks;
        }
      }
      return ticks;
    }
  }
}
