package corewright.station.demo;

import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.Supply;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.station.demo.DemoCore.OnTheBench;
import java.util.List;

/** The eight cores of the sample shop. Names and numbers are invented; severities are drawn. */
final class DemoCores {
  static final List<DemoCore> ALL =
      List.of(
          new DemoCore("1-healthy", draw -> stiff(draw, "sd48")),
          new DemoCore(
              "2-weak-converter",
              draw -> stiff(draw, "sd48", UnitFault.WEAK_POWER_STAGE, 0.15, 0.55)),
          new DemoCore(
              "3-weak-converter-in-resin",
              draw -> fast(stiff(draw, "sd48", UnitFault.WEAK_POWER_STAGE, 0.15, 0.55))),
          new DemoCore(
              "4-dry-capacitors", draw -> stiff(draw, "pv65", UnitFault.DRIED_OUT, 0.6, 1)),
          new DemoCore("5-hiccup", draw -> stiff(draw, "ie110", UnitFault.HICCUPS, 0.5, 1)),
          new DemoCore(
              "6-bench-supply-drops",
              draw ->
                  new OnTheBench(
                      draw.healthy("sd48"),
                      Supply.stiff().withResistance(draw.severity(0.25, 0.35)))),
          new DemoCore(
              "7-swapped-label",
              draw -> fast(stiff(draw, "sd48", UnitFault.WEAK_POWER_STAGE, 0.15, 0.55))),
          new DemoCore("8-dead-short", draw -> stiff(draw, "sd48", UnitFault.DEAD_SHORT, 0, 1)));

  private DemoCores() {}

  /** A healthy unit on a stiff supply, as the shop rebuilds it. */
  static OnTheBench stiff(UnitDraw draw, String family) {
    return new OnTheBench(draw.healthy(family), Supply.stiff());
  }

  /** The same unit in one of sd48's later builds, which switch at 100 kHz instead of 65. */
  private static OnTheBench fast(OnTheBench early) {
    double hertz = 1 / early.unit().get(Parameter.PERIOD);
    return new OnTheBench(early.unit().switchingAt(hertz * 100 / 65), early.supply());
  }

  private static OnTheBench stiff(
      UnitDraw draw, String family, UnitFault fault, double mild, double severe) {
    return new OnTheBench(
        fault.in(draw.healthy(family), draw.severity(mild, severe)), Supply.stiff());
  }
}
