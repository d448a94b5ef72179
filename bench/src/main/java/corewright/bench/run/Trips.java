package corewright.bench.run;

import corewright.bench.record.RunEnd;
import corewright.measures.Figures;
import corewright.profiles.AbortLimits;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.SupplyFeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every trip of a run. To add one: its line here, its case in TripsTest. */
final class Trips {
  private static final String OUTPUT = "output";
  private static final String INPUT_CURRENT = "inputCurrent";

  /** Shorter is a spike on the sense line: the input qualifier also looks at medians of 1 ms. */
  private static final double SPIKE_S = 0.001;

  private final List<Trip> all;

  private Trips(List<Trip> all) {
    this.all = List.copyOf(all);
  }

  /**
   * @param more what else is looked at, after the digitizer's own channels
   */
  static Trips of(Family family, Profile profile, List<Trip> more) {
    AbortLimits abort = family.abort();
    List<Trip> all = new ArrayList<>();
    // The bench first: a frame that cannot be trusted says nothing about the unit.
    all.add(new ChainOpen());
    all.add(new RelayOpen());
    all.add(new Blind(abort));
    all.add(outputOver(abort));
    all.add(supplyCurrentOver(abort));
    profile.feeds().forEach(feed -> all.add(feedOver(feed, family)));
    all.add(outputUnder(abort));
    all.addAll(more);
    return new Trips(all);
  }

  /** The first that sees something. */
  Optional<Trip.Seen> look(FrameView view) {
    Optional<Trip.Seen> first = Optional.empty();
    for (Trip trip : all) { // all of them: each keeps its own count
      Optional<Trip.Seen> seen = trip.look(view);
      first = first.or(() -> seen);
    }
    return first;
  }

  private static Trip outputOver(AbortLimits abort) {
    return new Beyond(
        RunEnd.Trip.OUTPUT_OVER,
        OUTPUT,
        v -> v > abort.outputOver_V(),
        0,
        view -> true,
        (v, view) ->
            "The output rose to "
                + volts(v)
                + "; more than "
                + volts(abort.outputOver_V())
                + " ends the run.");
  }

  private static Trip outputUnder(AbortLimits abort) {
    return new Beyond(
        RunEnd.Trip.OUTPUT_UNDER,
        OUTPUT,
        v -> v < abort.outputUnder_V(),
        abort.underHold_s(),
        view -> view.load_A() > 0,
        (v, view) ->
            "The output was "
                + volts(v)
                + " at a load of "
                + amperes(view.load_A())
                + ", and under "
                + volts(abort.outputUnder_V())
                + " for more than "
                + seconds(abort.underHold_s())
                + ".");
  }

  private static Trip supplyCurrentOver(AbortLimits abort) {
    return new Beyond(
        RunEnd.Trip.SUPPLY_CURRENT_OVER,
        INPUT_CURRENT,
        a -> a > abort.inputOver_A(),
        abort.inputOver_s(),
        view -> true,
        (a, view) ->
            "The unit drew "
                + amperes(a)
                + ", and more than "
                + amperes(abort.inputOver_A())
                + " for more than "
                + seconds(abort.inputOver_s())
                + ".");
  }

  private static Trip feedOver(SupplyFeed feed, Family family) {
    return new Beyond(
        RunEnd.Trip.NONE,
        feed.name(),
        v -> v > family.inputCeiling_V(),
        SPIKE_S,
        view -> true,
        (v, view) ->
            "Supply feed "
                + feed.name()
                + " rose to "
                + volts(v)
                + "; the unit may be given "
                + volts(family.inputCeiling_V())
                + ".");
  }

  private static String volts(double v) {
    return beyondTheRange(v).orElseGet(() -> Figures.number(v, 2) + " V");
  }

  private static String amperes(double a) {
    return beyondTheRange(a).orElseGet(() -> Figures.number(a, 2) + " A");
  }

  private static String seconds(double s) {
    return Figures.number(s, 3) + " s";
  }

  private static Optional<String> beyondTheRange(double value) {
    return Double.isInfinite(value)
        ? Optional.of("beyond the digitizer's range")
        : Optional.empty();
  }
}
