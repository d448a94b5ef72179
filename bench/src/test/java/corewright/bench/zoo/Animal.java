package corewright.bench.zoo;

import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.LoadMode;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * One unit of the zoo on its bench.
 *
 * @param what in words, for whoever looks at what went wrong
 */
record Animal(
    Family family,
    Profile profile,
    UnitParameters unit,
    Harness harness,
    long seed,
    Optional<UnitFault> fault,
    String what) {

  private static final List<String> FAMILIES = List.of("sd48", "ie110", "pv65");
  private static final double[] KELVIN = {-5, 0, 5};

  /** Openings of a joint that a full load must see before chance can no longer hide it. */
  private static final double OPENINGS = 8;

  private static final double FULL_S = 2;

  /**
   * A unit of one combination.
   *
   * @param open whether it may also be more severe than the combination says
   */
  static Animal faulty(Catalogue catalogue, Cell cell, boolean open, Random random) {
    double severity = cell.severity(random.nextDouble(), open);
    return draw(
        catalogue,
        Optional.of(cell.fault()),
        severity,
        cell.kelvin(),
        cell.load(),
        random,
        cell.fault() + " " + Math.round(100 * severity) + " %");
  }

  /** A healthy unit. */
  static Animal healthy(Catalogue catalogue, Random random) {
    return draw(
        catalogue,
        Optional.empty(),
        0,
        KELVIN[random.nextInt(KELVIN.length)],
        LoadMode.values()[random.nextInt(LoadMode.values().length)],
        random,
        "healthy");
  }

  private static Animal draw(
      Catalogue catalogue,
      Optional<UnitFault> fault,
      double severity,
      double kelvin,
      LoadMode load,
      Random random,
      String what) {
    String family = FAMILIES.get(random.nextInt(FAMILIES.size()));
    String profile = family + (random.nextBoolean() ? "-arrival" : "-ship");
    long seed = random.nextLong();
    UnitParameters healthy = new UnitDraw(seed).healthy(family);
    UnitParameters unit =
        atTemperature(fault.map(f -> f.in(healthy, severity)).orElse(healthy), kelvin);
    return new Animal(
        catalogue.family(family),
        catalogue.profile(profile),
        unit,
        Harness.sound(unit.get(Parameter.NOMINAL)).with(load),
        seed,
        fault,
        what + " " + profile + " " + kelvin + " K " + load);
  }

  /** Within the profile's tolerance: resistance of the capacitors about −1.5 % a kelvin. */
  private static UnitParameters atTemperature(UnitParameters unit, double kelvin) {
    return unit.times(Parameter.ESR, Math.exp(-0.015 * kelvin))
        .times(Parameter.LEAKAGE, Math.exp(0.03 * kelvin))
        .times(Parameter.SWITCH, 1 + 0.004 * kelvin);
  }

  Animal on(Harness other, String words) {
    return new Animal(family, profile, unit, other, seed, fault, what + " on " + words);
  }

  Setup setup() {
    return Setup.of(unit, seed).on(harness);
  }

  /** What the noise-free physics asks for; chance is left to a joint where it cannot hide. */
  Verdict truth() {
    if (unit.get(Parameter.LEAKAGE) * family.output_V() > 2 * family.ratedLoad_A()
        || unit.get(Parameter.INPUT_LEAKAGE) > 1 / family.dead().input_ohm()) {
      return Verdict.UNSAFE; // no converter feeds that: a short
    }
    if (fault.filter(f -> f == UnitFault.CRACKED_JOINT).isPresent()) {
      double drop_V = unit.get(Parameter.JOINT) * family.ratedLoad_A();
      boolean shows =
          drop_V > 0.05 * family.output_V() && unit.get(Parameter.JOINT_RATE) * FULL_S > OPENINGS;
      return shows ? Verdict.FAIL : Verdict.MARGINAL;
    }
    return Physics.verdict(unit, harness, family, profile);
  }
}
