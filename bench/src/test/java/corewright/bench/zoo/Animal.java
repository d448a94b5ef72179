package corewright.bench.zoo;

import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
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

  /** Openings of a joint that a full load must see before chance can no longer hide it. */
  private static final double OPENINGS = 8;

  private static final double FULL_S = 2;

  /** A unit at one of three temperatures and in one of two profiles, drawn from the seed. */
  static Animal draw(
      Catalogue catalogue, String familyId, Optional<UnitFault> fault, Random random) {
    long seed = random.nextLong();
    UnitDraw draw = new UnitDraw(seed);
    double kelvin = 5 * (random.nextInt(3) - 1);
    double severity = draw.severity(0.2, 1);
    UnitParameters healthy = draw.healthy(familyId);
    UnitParameters unit =
        atTemperature(fault.map(f -> f.in(healthy, severity)).orElse(healthy), kelvin);
    String mode = random.nextBoolean() ? "-arrival" : "-ship";
    return new Animal(
        catalogue.family(familyId),
        catalogue.profile(familyId + mode),
        unit,
        Harness.sound(unit.get(Parameter.NOMINAL)),
        seed,
        fault,
        fault.map(f -> f + " " + Math.round(100 * severity) + " %").orElse("healthy")
            + " "
            + familyId
            + mode
            + " "
            + kelvin
            + " K");
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
    if (fault.filter(f -> f == UnitFault.DEAD_SHORT).isPresent()) {
      return Verdict.UNSAFE;
    }
    if (fault.filter(f -> f == UnitFault.CRACKED_JOINT).isPresent()) {
      double drop_V = unit.get(Parameter.JOINT) * family.ratedLoad_A();
      boolean shows =
          drop_V > 0.05 * family.output_V() && unit.get(Parameter.JOINT_RATE) * FULL_S > OPENINGS;
      return shows ? Verdict.FAIL : Verdict.MARGINAL;
    }
    return Physics.verdict(unit, family, profile);
  }
}
