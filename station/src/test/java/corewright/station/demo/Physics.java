package corewright.station.demo;

import corewright.bench.record.Finding.Outcome;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.unit.Channel;
import corewright.fixtures.emulate.unit.Oracle;
import corewright.fixtures.emulate.unit.Oracle.Truth;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.profiles.Family;
import corewright.profiles.InputZones;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.station.demo.DemoCore.OnTheBench;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The verdict that the noise-free physics asks for: the circuit itself is asked, without noise,
 * ripple sampling, ports, engine, meter or judge, and what it says is held against the numbers of
 * the profile.
 */
final class Physics {
  private final OnTheBench unit;
  private final Family family;
  private final Profile profile;
  private final List<Step> holds;
  private final List<Truth> truths;

  Physics(OnTheBench unit, Family family, Profile profile) {
    this.unit = unit;
    this.family = family;
    this.profile = profile;
    holds = profile.steps().stream().filter(s -> s.kind() == Step.Kind.HOLD).toList();
    Oracle oracle =
        new Oracle(unit.unit(), unit.supply(), holds.get(0).input_V(), holds.get(0).inputLimit_A());
    truths =
        oracle.play(
            holds.stream()
                .map(s -> new Oracle.Hold(s.input_V(), s.inputLimit_A(), s.load_A(), s.hold_s()))
                .toList(),
            profile.settle_s().orElseThrow(),
            profile.guard_s().orElseThrow());
  }

  /** The verdict that a unit deserves, with simple acceptance. */
  static Verdict verdict(OnTheBench unit, Family family, Profile profile) {
    return new Physics(unit, family, profile).verdict();
  }

  Verdict verdict() {
    Step first =
        profile.steps().stream()
            .filter(s -> s.kind() == Step.Kind.FIRST_POWER)
            .findFirst()
            .orElseThrow();
    // A short draws the whole limit long before the nominal input is reached.
    if (unit.unit().get(Parameter.LEAKAGE) * first.input_V() > first.inputLimit_A()
        || truths.stream().anyMatch(t -> t.output_V() > family.abort().outputOver_V())) {
      return Verdict.UNSAFE;
    }
    InputZones zones = family.zones();
    double lowest_V = truths.stream().mapToDouble(Truth::inputLowest_V).min().orElseThrow();
    Verdict ofLimits = ofLimits();
    return lowest_V < zones.tolerated_V() || lowest_V < zones.good_V() && ofLimits != Verdict.PASS
        ? Verdict.VOID
        : ofLimits;
  }

  private Verdict ofLimits() {
    List<Outcome> outcomes = new ArrayList<>();
    for (Limit limit : profile.limits()) {
      worst(limit).map(Worst::outcome).ifPresent(outcomes::add);
    }
    boolean collapsed =
        truths.stream().anyMatch(t -> t.output_V() < family.abort().outputUnder_V());
    if (collapsed || outcomes.contains(Outcome.FAIL)) {
      return Verdict.FAIL;
    }
    return outcomes.contains(Outcome.MARGINAL) ? Verdict.MARGINAL : Verdict.PASS;
  }

  /**
   * What comes nearest to failing one limit.
   *
   * @param hold its index
   * @param value in the limit's unit
   * @param limit as it applies to this hold
   */
  record Worst(int hold, double value, Limit limit) {

    /** Distance to the pass limit, positive on the good side. */
    double toPass() {
      return toward(value - limit.pass());
    }

    /** Distance to the fail limit, positive on the good side. */
    double toFail() {
      return toward(value - limit.fail());
    }

    Outcome outcome() {
      return toPass() >= 0 ? Outcome.PASS : toFail() >= 0 ? Outcome.MARGINAL : Outcome.FAIL;
    }

    private double toward(double difference) {
      return limit.side() == Limit.Side.AT_LEAST ? difference : -difference;
    }
  }

  /** The worst hold for one limit; empty where the profile never asks for it. */
  Optional<Worst> worst(Limit limit) {
    Optional<Worst> worst = Optional.empty();
    for (int i = 0; i < holds.size(); i++) {
      boolean steps = i > 0 && holds.get(i).load_A() != holds.get(i - 1).load_A();
      Optional<Double> before = i == 0 ? Optional.empty() : Optional.of(holds.get(i - 1).load_A());
      Optional<Limit> asked = limit.at(before, holds.get(i).load_A(), holds.get(i).hold_s());
      if (asked.isPresent() && (steps || !ofAnEdge(limit))) {
        Worst here = new Worst(i, value(limit, i), asked.get());
        if (worst.isEmpty() || here.toPass() < worst.get().toPass()) {
          worst = Optional.of(here);
        }
      }
    }
    return worst;
  }

  private static boolean ofAnEdge(Limit limit) {
    return switch (limit.quantity()) {
      case UNDERSHOOT, OVERSHOOT, RECOVERY -> true;
      default -> false;
    };
  }

  /**
   * What a channel adds to the square of an rms: its noise, and its rounding, step²/12. The reading
   * is of all that is about the mean, and has both in it (measures/README.md, Definitions).
   */
  private double channel_V() {
    Channel output =
        Channel.forOutput(family.output_V()).stream()
            .filter(c -> c.name().equals("output"))
            .findFirst()
            .orElseThrow();
    return Math.hypot(output.noise(), output.lsb() / Math.sqrt(12));
  }

  private double value(Limit limit, int hold) {
    Truth t = truths.get(hold);
    return switch (limit.quantity()) {
      case OUTPUT -> t.output_V();
      case DROOP -> truths.get(0).output_V() - t.output_V();
      case RIPPLE_PEAK_TO_PEAK -> t.ripple_V();
      case RIPPLE_RMS -> Math.hypot(t.rippleRms_V(), channel_V());
      case UNDERSHOOT -> t.undershoot_V();
      case RECOVERY -> t.recovery_s();
      case DRIFT -> t.drift_VperMin();
      default ->
          throw new IllegalStateException(
              "the physics is not asked for " + limit.quantity() + ": add it here");
    };
  }
}
