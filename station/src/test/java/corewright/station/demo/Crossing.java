package corewright.station.demo;

import corewright.bench.record.Finding;
import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.unit.Supply;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.station.demo.DemoCore.OnTheBench;
import java.util.Comparator;
import java.util.Set;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Units near one edge of a limit, seen by the physics and by the station. */
final class Crossing {
  private static final double K = 2;
  private static final int MOST = 60;
  private static final double ACCURACY = 0.003;

  /** Where the slope at the edge is taken. */
  private static final double NEAR = 0.02;

  private static final Set<String> FEW = Set.of("rest", "quarter", "half", "full");

  private final Walk walk;
  private final Family family;
  private final Profile profile;
  private final Limit limit;
  private final double edge;
  private final Physics.Worst there;

  /**
   * @param whole all holds of the profile; else the first few, no longer than they must be
   */
  Crossing(Walk walk, String purpose, boolean whole) {
    Catalogue catalogue = Catalogue.ofHome();
    this.walk = walk;
    family = catalogue.family(walk.family());
    Profile shipped = catalogue.profile(walk.family() + "-" + purpose);
    limit =
        shipped.limits().stream()
            .filter(l -> l.id().equals(walk.limit()))
            .findFirst()
            .orElseThrow();
    profile =
        whole ? shipped : Shortened.of(shipped, s -> FEW.contains(s.id()), limit.fromHold_s());
    double from = Math.log(walk.from());
    double to = Math.log(walk.to());
    edge =
        new BrentSolver(ACCURACY).solve(MOST, this::margin, Math.min(from, to), Math.max(from, to));
    there = physics(edge).worst(limit).orElseThrow();
  }

  /** How wide the marginal band is, in the unit of the reading. */
  double band() {
    return Math.abs(there.toPass() - there.toFail());
  }

  /**
   * A unit about so far from the edge.
   *
   * @param margin in the reading's unit, the good side positive
   */
  Unit at(double margin) {
    if (margin == 0) {
      return new Unit(edge);
    }
    double direction = Math.signum(Math.log(walk.from()) - Math.log(walk.to()));
    double near = edge + direction * Math.signum(margin) * NEAR;
    double at = walk.edge().margin(there);
    return new Unit(edge + (margin - at) * (near - edge) / (margin(near) - at));
  }

  private double margin(double log) {
    return walk.edge().margin(physics(log).worst(limit).orElseThrow());
  }

  private Physics physics(double log) {
    return new Physics(bench(log), family, profile);
  }

  private OnTheBench bench(double log) {
    return new OnTheBench(walk.unit(Math.exp(log)), Supply.stiff());
  }

  /** One unit, asked of both. */
  final class Unit {
    private final Physics physics;
    private final Judgement station;

    private Unit(double log) {
      physics = physics(log);
      station =
          new LinelessBench(family, profile).test(bench(log), Double.hashCode(log)).judgement();
    }

    /** How far the physics lies from the edge. */
    double margin() {
      return walk.edge().margin(physics.worst(limit).orElseThrow());
    }

    /** What the physics says of the limit. */
    Finding.Outcome asked() {
      return physics.worst(limit).orElseThrow().outcome();
    }

    /** What the physics says of the unit, with simple acceptance. */
    Verdict askedVerdict() {
      return physics.verdict();
    }

    /** What the station says of the unit. */
    Verdict verdict() {
      return station.verdict().orElseThrow();
    }

    /** What the station says of the limit. */
    Finding.Outcome said() {
      return worst().outcome();
    }

    /** U = 2u of the station's reading that decides about the limit. */
    double expandedU() {
      return K * worst().measurement().orElseThrow().u();
    }

    private Finding worst() {
      return station.findings().stream()
          .filter(f -> f.limit().id().equals(walk.limit()))
          .filter(f -> f.margin().isPresent())
          .min(Comparator.comparingDouble(f -> f.margin().orElseThrow()))
          .orElseThrow();
    }
  }
}
