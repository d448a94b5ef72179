package corewright.reports;

import corewright.files.Origin;
import corewright.measures.Quantity;
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
import corewright.profiles.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The family of {@link Waves}: 12 V in, 48 V out, stepped to 2 A, as a shop would describe it. */
public final class SampleFamily {
  private static final double ANY = Double.POSITIVE_INFINITY;
  private static final InputZones ZONES = new InputZones(10, 9);

  private SampleFamily() {}

  public static Family family() {
    return new Family(
        "sd48",
        4,
        "12 V to 48 V solenoid driver",
        12.5,
        16,
        48,
        2,
        2e-3,
        15e-3,
        65e3,
        ZONES,
        new AbortLimits(56, 30, 0.5, 18, 0.01, 90),
        new Discharge(470, 10, 5, 2.1),
        new DeadLimits(50, 500),
        "sd48-arrival",
        false,
        List.of(
            variant(
                "A2", "Soft gel, 6 bosses", Variant.Serviceable.YES, "it is filled with soft gel"),
            variant(
                "A3",
                "Hard resin, 8 bosses",
                Variant.Serviceable.NO,
                "its converter is set in hard resin")),
        List.of(),
        List.of(),
        new Economics("EUR", 480, 480, 310, 46, 2.6, 55, 18, 22, 40, 0.88, 45, 25),
        origin("profiles/families/sd48/family.json"));
  }

  public static Profile profile(Profile.Purpose purpose) {
    List<Step> steps = new ArrayList<>();
    double[] loads = {0, 0.5, 1, 2, 0};
    for (double load : loads) {
      steps.add(
          new Step(
              "load-" + load,
              Step.Kind.HOLD,
              load == 2 ? "Steady full load" : "Steady " + load + " A",
              12.5,
              20,
              load,
              Waves.HOLD_S,
              load > 0));
    }
    return new Profile(
        "sd48-" + purpose.name().toLowerCase(java.util.Locale.ROOT),
        7,
        "sd48",
        "Stepped load at room temperature",
        purpose,
        Waves.RATE_HZ,
        Optional.empty(),
        Optional.empty(),
        List.of(new SupplyFeed("input", ZONES)),
        false,
        0.3,
        steps,
        limits(),
        23,
        5,
        origin("profiles/families/sd48/sd48-arrival.json"));
  }

  private static List<Limit> limits() {
    return List.of(
        limit("output-full", Quantity.OUTPUT, Limit.Side.AT_LEAST, 46.5, 45.0, 1.9, true),
        limit("droop", Quantity.DROOP, Limit.Side.AT_MOST, 2.0, 2.5, 0.4, false),
        limit("ripple", Quantity.RIPPLE_PEAK_TO_PEAK, Limit.Side.AT_MOST, 4.0, 4.0, 0.4, false),
        limit("drift", Quantity.DRIFT, Limit.Side.AT_LEAST, -3, -12, 0.4, false),
        limit("lowest", Quantity.OUTPUT_MINIMUM, Limit.Side.AT_LEAST, 43.5, 43.5, 0.4, false));
  }

  private static Limit limit(
      String id,
      Quantity quantity,
      Limit.Side side,
      double pass,
      double fail,
      double from_A,
      boolean headline) {
    return new Limit(id, quantity, side, pass, fail, from_A, ANY, headline, "a sample");
  }

  private static Variant variant(
      String id, String title, Variant.Serviceable serviceable, String why) {
    return new Variant(id, title, serviceable, why, "kit-" + id, 0.5, Map.of());
  }

  private static Origin origin(String path) {
    return new Origin(path, "cd".repeat(32), "{\"path\":\"" + path + "\"}\n");
  }
}
