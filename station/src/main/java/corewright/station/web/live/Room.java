package corewright.station.web.live;

import corewright.measures.Figures;
import corewright.profiles.AbortLimits;
import corewright.station.web.live.Columns.Lane;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far each trip is away, from the worst of the last quarter of a second.
 *
 * @param name the trip, as {@code Output over 56.0 V}
 * @param share where the reading stands between nothing and the trip, 0 to 1; −1 where it is not
 *     read
 * @param left the distance in words
 */
record Room(String name, double share, String left) {
  private static final int LOOK_BACK_MS = 250;
  private static final double THOUSANDTHS = 1000;

  static List<Room> of(LiveRun run) {
    AbortLimits abort = run.course().family().abort();
    Columns columns = run.columns();
    int back = Math.max(1, LOOK_BACK_MS / columns.column_ms());
    int[] last = columns.copy(columns.size() - back, columns.size());
    List<Room> all = new ArrayList<>();
    all.add(over("Output", "V", high(last, Lane.OUTPUT), abort.outputOver_V()));
    all.add(under(last, abort.outputUnder_V()));
    all.add(over("Input", "A", high(last, Lane.CURRENT), abort.inputOver_A()));
    all.add(over("Case", "°C", run.case_C(), abort.case_C()));
    return all;
  }

  private static Room over(String what, String unit, Optional<Double> at, double trip) {
    String name = what + " over " + Figures.number(trip, unit.equals("°C") ? 0 : 1) + " " + unit;
    return at.map(v -> new Room(name, share(v, trip), left(trip - v, unit)))
        .orElse(new Room(name, -1, "not read"));
  }

  /** Asked only while the load is on: without one the output may be anywhere. */
  private static Room under(int[] last, double trip_V) {
    String name = "Output under " + Figures.number(trip_V, 1) + " V";
    boolean loaded = high(last, Lane.LOAD).filter(a -> a > 0.01).isPresent();
    int low = Columns.extremes(last, Lane.OUTPUT)[0];
    if (!loaded || low == Columns.NOTHING) {
      return new Room(name, -1, "no load");
    }
    double volts = low / THOUSANDTHS;
    double share = volts > trip_V ? trip_V / volts : 1;
    return new Room(name, share, left(volts - trip_V, "V"));
  }

  private static String left(double distance, String unit) {
    return distance < 0
        ? "beyond it"
        : Figures.number(distance, unit.equals("°C") ? 0 : 1) + " " + unit + " left";
  }

  private static double share(double at, double trip) {
    return Math.max(0, Math.min(1, at / trip));
  }

  private static Optional<Double> high(int[] columns, Lane lane) {
    int high = Columns.extremes(columns, lane)[1];
    return high == Columns.NOTHING ? Optional.empty() : Optional.of(high / THOUSANDTHS);
  }
}
