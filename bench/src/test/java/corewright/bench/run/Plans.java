package corewright.bench.run;

import corewright.files.Origin;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.BenchDescription.FixtureDescription;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.profiles.SupplyFeed;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Short plans for the family sd48. */
final class Plans {
  static final Family SD48 = Catalogue.ofHome().family("sd48");
  private static final Origin NONE = new Origin("test", "", "");

  static final Step DEAD = new Step("dead", Step.Kind.DEAD_CHECK, "Dead", 0, 0, 0, 0, false);
  static final Step FIRST =
      new Step("first", Step.Kind.FIRST_POWER, "First power", 12.5, 0.5, 0, 3, false);
  static final Step REST = hold("rest", 12.5, 0, 0.4);
  static final Step FULL = hold("full", 12.5, 2, 0.6);
  static final Step AWAY =
      new Step("discharge", Step.Kind.DISCHARGE, "Discharge", 0, 0, 0, 0, false);

  private Plans() {}

  static Step hold(String id, double input_V, double load_A, double hold_s) {
    return new Step(id, Step.Kind.HOLD, id, input_V, 20, load_A, hold_s, true);
  }

  static Profile profile(Step... steps) {
    return profile("sd48", 1000, List.of(steps));
  }

  static Profile profile(String family, double rate_Hz, List<Step> steps) {
    return profile(family, rate_Hz, 23, steps);
  }

  static Profile profile(String family, double rate_Hz, double temperature_C, List<Step> steps) {
    return new Profile(
        "test",
        1,
        family,
        "Test",
        Profile.Purpose.ARRIVAL,
        rate_Hz,
        Optional.empty(),
        Optional.empty(),
        List.of(new SupplyFeed("input", SD48.zones())),
        false,
        1,
        steps,
        List.of(),
        temperature_C,
        5,
        NONE);
  }

  static Profile whole() {
    return profile(DEAD, FIRST, REST, FULL, AWAY);
  }

  static BenchDescription bench() {
    List<Connection> connections =
        Stream.of("load", "source", "digitizer", "switch", "interlock")
            .map(role -> new Connection(role, role, 115200, 4e7, "", "cal " + role))
            .toList();
    return new BenchDescription(
        "bench-1",
        1,
        "Test",
        connections,
        List.of(
            new ChannelCalibration("input", 5e-4, 0.004, "cal"),
            new ChannelCalibration("output", 5e-4, 0.012, "cal"),
            new ChannelCalibration("load", 2e-3, 0.003, "cal"),
            new ChannelCalibration("inputCurrent", 2e-3, 0.006, "cal")),
        new FixtureDescription("EF-SD48", List.of("sd48"), 470, 60),
        0.05,
        NONE);
  }

  static Confirmations confirmed() {
    return new Confirmations(true, Optional.empty(), Optional.empty(), List.of());
  }

  static RunPlan plan(Path folder) {
    return plan(folder, whole());
  }

  static RunPlan plan(Path folder, Profile profile) {
    return new RunPlan("run-1", "CW-1", SD48, profile, bench(), "Ada", folder, confirmed());
  }
}
