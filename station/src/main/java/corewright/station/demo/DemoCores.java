package corewright.station.demo;

import static corewright.fixtures.emulate.unit.Parameter.CAPACITANCE;
import static corewright.fixtures.emulate.unit.Parameter.CURRENT_LIMIT;
import static corewright.fixtures.emulate.unit.Parameter.ESR;
import static corewright.fixtures.emulate.unit.Parameter.HICCUP;
import static corewright.fixtures.emulate.unit.Parameter.LEAKAGE;
import static corewright.fixtures.emulate.unit.Parameter.NOMINAL;

import corewright.fixtures.emulate.unit.Supply;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.station.demo.DemoCore.OnTheBench;
import java.util.List;
import java.util.random.RandomGenerator;

/** The eight cores of the sample shop. Names and numbers are invented; severities are drawn. */
final class DemoCores {
  static final List<DemoCore> ALL =
      List.of(
          new DemoCore("1-healthy", r -> stiff(sibling("sd48", r))),
          new DemoCore(
              "2-weak-converter",
              r -> stiff(sibling("sd48", r).times(CURRENT_LIMIT, between(r, 0.30, 0.50)))),
          new DemoCore(
              "3-weak-converter-in-resin",
              r -> stiff(sibling("sd48", r).times(CURRENT_LIMIT, between(r, 0.30, 0.50)))),
          new DemoCore(
              "4-dry-capacitors",
              r ->
                  stiff(
                      sibling("pv65", r)
                          .times(ESR, between(r, 6, 12))
                          .times(CAPACITANCE, between(r, 0.45, 0.75)))),
          new DemoCore(
              "5-hiccup",
              r ->
                  stiff(
                      sibling("ie110", r)
                          .times(CURRENT_LIMIT, between(r, 0.45, 0.65))
                          .with(HICCUP, 1))),
          new DemoCore(
              "6-bench-supply-drops",
              r ->
                  new OnTheBench(
                      sibling("sd48", r), Supply.stiff().withResistance(between(r, 0.35, 0.50)))),
          new DemoCore(
              "7-swapped-label",
              r -> stiff(sibling("sd48", r).times(CURRENT_LIMIT, between(r, 0.30, 0.50)))),
          new DemoCore(
              "8-dead-short", r -> stiff(sibling("sd48", r).with(LEAKAGE, between(r, 2, 20)))));

  private DemoCores() {}

  /** A healthy unit as the shop rebuilds it. */
  static UnitParameters rebuilt(String family, RandomGenerator random) {
    return sibling(family, random);
  }

  /** A healthy unit that differs from its siblings as parts do. */
  private static UnitParameters sibling(String family, RandomGenerator random) {
    return UnitParameters.healthy(family)
        .times(NOMINAL, between(random, 0.997, 1.003))
        .times(CAPACITANCE, between(random, 0.92, 1.08))
        .times(ESR, between(random, 0.85, 1.15))
        .times(CURRENT_LIMIT, between(random, 0.95, 1.05));
  }

  private static OnTheBench stiff(UnitParameters unit) {
    return new OnTheBench(unit, Supply.stiff());
  }

  private static double between(RandomGenerator random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
