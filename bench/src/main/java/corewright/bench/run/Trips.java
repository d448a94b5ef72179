package corewright.bench.run;

import corewright.bench.record.RunEnd;
import corewright.measures.Figures;
import corewright.measures.Unit;
import corewright.profiles.AbortLimits;
import corewright.profiles.Family;
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
  static Trips of(RunPlan plan, List<Trip> more) {
    AbortLimits abort = plan.family().abort();
    OneSample sample = new OneSample(plan.bench());
    List<Trip> all = new ArrayList<>();
    // The bench first: a frame that cannot be trusted says nothing about the unit.
    all.add(new ChainOpen());
    all.add(new RelayOpen());
    all.add(new Blind(abort));
    all.add(outputOver(abort, sample));
    all.add(supplyCurrentOver(abort, sample));
    plan.profile().feeds().forEach(feed -> all.add(feedOver(feed, plan.family(), sample)));
    all.add(outputUnder(abort, sample));
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

  private static Trip outputOver(AbortLimits abort, OneSample sample) {
    return new Beyond(
        RunEnd.Trip.OUTPUT_OVER,
        OUTPUT,
        v -> v > abort.outputOver_V(),
        0,
        view -> true,
        (v, view) ->
            "The output rose to "
                + sample.words(OUTPUT, v, Unit.VOLT)
                + "; more than "
                + volts(abort.outputOver_V())
                + " ends the run.");
  }

  private static Trip outputUnder(AbortLimits abort, OneSample sample) {
    return new Beyond(
        RunEnd.Trip.OUTPUT_UNDER,
        OUTPUT,
        v -> v < abort.outputUnder_V(),
        abort.underHold_s(),
        view -> view.load_A() > 0,
        (v, view) ->
            "The output was "
                + sample.words(OUTPUT, v, Unit.VOLT)
                + " at a load set to "
                + amperes(view.load_A())
                + ", and under "
                + volts(abort.outputUnder_V())
                + " for more than "
                + seconds(abort.underHold_s())
                + ".");
  }

  private static Trip supplyCurrentOver(AbortLimits abort, OneSample sample) {
    return new Beyond(
        RunEnd.Trip.SUPPLY_CURRENT_OVER,
        INPUT_CURRENT,
        a -> a > abort.inputOver_A(),
        abort.inputOver_s(),
        view -> true,
        (a, view) ->
            "The unit drew "
                + sample.words(INPUT_CURRENT, a, Unit.AMPERE)
                + ", and more than "
                + amperes(abort.inputOver_A())
                + " for more than "
                + seconds(abort.inputOver_s())
                + ".");
  }

  private static Trip feedOver(SupplyFeed feed, Family family, OneSample sample) {
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
                + sample.words(feed.name(), v, Unit.VOLT)
                + "; the unit may be given "
                + volts(family.inputCeiling_V())
                + ".");
  }

  private static String volts(double v) {
    return Figures.plain(v) + " V";
  }

  private static String amperes(double a) {
    return Figures.plain(a) + " A";
  }

  private static String seconds(double s) {
    return Figures.plain(s) + " s";
  }
}
