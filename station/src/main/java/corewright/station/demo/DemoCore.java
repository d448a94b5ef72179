package corewright.station.demo;

import corewright.fixtures.emulate.unit.Supply;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.util.function.Function;

/**
 * One core of the sample shop: what people saw of it, and what it really is. It names no verdict;
 * that follows from the physics.
 *
 * @param name its answers file among this package's resources, without the ending
 * @param made draws the unit and what it hangs on
 */
public record DemoCore(String name, Function<UnitDraw, OnTheBench> made) {

  /**
   * What is plugged in.
   *
   * @param supply what stands between the bench's source and the unit
   */
  public record OnTheBench(UnitParameters unit, Supply supply) {}

  String resource() {
    return name + ".json";
  }
}
