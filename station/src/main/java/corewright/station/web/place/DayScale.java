package corewright.station.web.place;

import corewright.reports.ledger.RunFact;
import corewright.reports.ledger.Standing;
import corewright.station.web.HouseClock;
import corewright.station.web.When;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The working day as a scale: what was done hangs at its hour, what is due today at its end. What
 * finds no room is counted. Lengths are those of the drawing.
 *
 * @param more how many hung things found no room
 */
public record DayScale(
    List<Hour> hours,
    List<Double> ticks,
    double from,
    double now,
    double to,
    String clock,
    List<Hung> hung,
    int more) {
  static final int WIDTH = 1326;
  private static final double EDGE = 30;
  private static final double LETTER = 9.6;
  private static final double BESIDE = 18;
  private static final double CLOCK = 76;
  private static final int FIRST = 7;
  private static final int LAST = 18;
  private static final double DUE = 17;
  private static final List<Integer> DEPTHS = List.of(44, 90, 136);

  /** One hour's figure. */
  public record Hour(int hour, double x) {}

  /** One thing that hangs from the day. */
  public record Hung(double x, int depth, String anchor, String words, String more) {
    public double textX() {
      return anchor.equals("start") ? x + 8 : x - 8;
    }
  }

  private record Thing(double hour, String words, String more, boolean due) {}

  /**
   * The day.
   *
   * @param runs of late; those of other days are left out
   * @param pending open questions; those due later are left out
   */
  static DayScale of(List<RunFact> runs, List<Standing> pending, Instant now) {
    LocalDate today = When.local(now);
    List<Thing> things = new ArrayList<>();
    for (Standing s : pending) {
      if (!s.due().isEmpty() && s.due().compareTo(today.toString()) <= 0) {
        things.add(new Thing(DUE, s.tag() + " to be answered", s.owner(), true));
      }
    }
    for (RunFact r : runs) {
      Instant at = Instant.parse(r.started());
      if (When.local(at).equals(today)) {
        String verdict = r.verdict().isEmpty() ? "no verdict" : r.verdict();
        things.add(new Thing(hour(at), DayWords.hour(at) + " " + r.tag(), verdict, false));
      }
    }
    double first = Math.min(FIRST, Math.floor(earliest(things, hour(now))));
    double last = Math.max(LAST, Math.ceil(hour(now)));
    return new Layout(first, last).of(things, now);
  }

  /** On which side of the pointer the time of day has room. */
  public String clockAnchor() {
    return now + BESIDE + CLOCK > WIDTH ? "end" : "start";
  }

  /** Where it begins, or ends. */
  public double clockX() {
    return clockAnchor().equals("end") ? now - BESIDE : now + BESIDE;
  }

  /** Whether anything hangs from it. */
  public boolean empty() {
    return hung.isEmpty();
  }

  private static double earliest(List<Thing> things, double now) {
    return things.stream().mapToDouble(Thing::hour).min().orElse(now);
  }

  private static double hour(Instant at) {
    return LocalTime.ofInstant(at, HouseClock.zone()).toSecondOfDay() / 3600.0;
  }

  private record Layout(double first, double last) {
    double x(double hour) {
      return Math.rint(10 * (EDGE + (hour - first) * (WIDTH - 2 * EDGE) / (last - first))) / 10;
    }

    DayScale of(List<Thing> things, Instant now) {
      List<Hour> hours = new ArrayList<>();
      List<Double> ticks = new ArrayList<>();
      for (int h = (int) first; h <= last; h++) {
        if (h < last && Math.abs(h - hour(now)) > 0.6) {
          hours.add(new Hour(h, x(h)));
        }
        for (int sixth = 0; sixth < 6 && h < last; sixth++) {
          ticks.add(x(h + sixth / 6.0));
        }
      }
      List<Hung> hung = new ArrayList<>();
      List<List<double[]>> taken = new ArrayList<>();
      DEPTHS.forEach(d -> taken.add(new ArrayList<>()));
      int more = 0;
      for (Thing thing : things) {
        if (!hang(thing, hung, taken)) {
          more++;
        }
      }
      return new DayScale(
          hours, ticks, x(first), x(hour(now)), x(last), DayWords.hour(now), hung, more);
    }

    private boolean hang(Thing thing, List<Hung> hung, List<List<double[]>> taken) {
      double x = x(thing.hour());
      double length = 18 + LETTER * Math.max(thing.words().length(), thing.more().length());
      boolean before = thing.due() || x + length > WIDTH;
      double from = before ? x - length : x;
      for (int level = 0; level < DEPTHS.size(); level++) {
        List<double[]> row = taken.get(level);
        if (from >= 0 && row.stream().noneMatch(t -> from < t[1] && t[0] < from + length)) {
          row.add(new double[] {from, from + length});
          hung.add(
              new Hung(
                  x, DEPTHS.get(level), before ? "end" : "start", thing.words(), thing.more()));
          return true;
        }
      }
      return false;
    }
  }
}
