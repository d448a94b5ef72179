package corewright.bench.judge;

import corewright.files.Origin;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.AbortLimits;
import corewright.profiles.DeadLimits;
import corewright.profiles.Discharge;
import corewright.profiles.Economics;
import corewright.profiles.Family;
import corewright.profiles.InputZones;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.profiles.SupplyFeed;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An invented 12 V to 48 V family and runs of it, small enough to be read in a test. */
final class Invented {
  static final Origin NOWHERE = new Origin("invented", "", "");

  /** The limit of every run below: output at 3 A. */
  static final Limit OUTPUT_FULL =
      new Limit(
          "output-full",
          Quantity.OUTPUT,
          Limit.Side.AT_LEAST,
          46.5,
          45,
          2.5,
          3.5,
          true,
          "invented");

  static final Limit RIPPLE =
      new Limit(
          "ripple",
          Quantity.RIPPLE_PEAK_TO_PEAK,
          Limit.Side.AT_MOST,
          0.4,
          0.4,
          0.5,
          3.5,
          false,
          "invented");

  private Invented() {}

  static Family family() {
    return new Family(
        "inv48",
        1,
        "Invented 12 V to 48 V",
        12.5,
        16,
        48,
        3,
        470e-6,
        0.015,
        100e3,
        new InputZones(10, 9),
        new AbortLimits(56, 30, 0.5, 18, 0.01, 90),
        new Discharge(470, 10, 5, 3),
        new DeadLimits(50, 500),
        "arrival",
        false,
        List.of(),
        List.of(),
        List.of(),
        new Economics("EUR", 480, 480, 310, 46, 2.6, 55, 18, 22, 40, 0.88, 60, 25),
        NOWHERE);
  }

  static Profile profile(Profile.Purpose purpose, Limit... limits) {
    return profile(purpose, false, List.of("input"), List.of(step(0, 12.5), step(3, 12.5)), limits);
  }

  static Profile profile(
      Profile.Purpose purpose,
      boolean supplyDrops,
      List<String> feeds,
      List<Step> steps,
      Limit... limits) {
    return new Profile(
        "p",
        1,
        "inv48",
        "Invented",
        purpose,
        10_000,
        Optional.empty(),
        Optional.empty(),
        feeds.stream().map(name -> new SupplyFeed(name, family().zones())).toList(),
        supplyDrops,
        1.5,
        steps,
        List.of(limits),
        23,
        5,
        NOWHERE);
  }

  static Step step(double load_A, double input_V) {
    return step(load_A, input_V, true);
  }

  static Step step(double load_A, double input_V, boolean judged) {
    return new Step("at-" + load_A, Step.Kind.HOLD, "Hold", input_V, 40, load_A, 4, judged);
  }

  static MeasuredRun run(Hold... holds) {
    List<MeasuredHold> measured = new ArrayList<>();
    for (Hold hold : holds) {
      measured.add(hold.at(measured.size()));
    }
    return new MeasuredRun(
        10_000, 40_000L * holds.length, "invented", measured, Map.of(), List.of());
  }

  static Hold hold(double load_A, double output_V, double input_V) {
    return new Hold(load_A, output_V, 0.01, Map.of("input", Reading.of(input_V, 0.01, Unit.VOLT)));
  }

  /** A hold of 4 s; u of the output 10 mV unless told. */
  static final class Hold {
    private final Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    private final Map<String, Reading> feeds;
    private String recovery = "recovered";

    Hold(double load_A, double output_V, double u_V, Map<String, Reading> feeds) {
      this.feeds = feeds;
      for (Quantity quantity : Quantity.values()) {
        readings.put(quantity, Reading.none("not part of this record."));
      }
      with(Quantity.LOAD, Reading.of(load_A, 0.001, Unit.AMPERE));
      with(Quantity.OUTPUT, Reading.of(output_V, u_V, Unit.VOLT));
    }

    Hold with(Quantity quantity, Reading reading) {
      readings.put(quantity, reading);
      return this;
    }

    Hold recovery(String state) {
      recovery = state;
      return this;
    }

    private MeasuredHold at(int index) {
      double start_s = 4.0 * index;
      return new MeasuredHold(
          index,
          start_s,
          start_s + 4,
          start_s + 0.5,
          start_s + 3.98,
          readings,
          feeds.entrySet().stream()
              .map(f -> new FeedReadings(f.getKey(), f.getValue(), f.getValue(), f.getValue()))
              .toList(),
          recovery);
    }
  }
}
