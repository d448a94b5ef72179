package corewright.station.demo;

import corewright.fixtures.emulate.unit.Supply;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.station.demo.DemoCore.OnTheBench;
import java.util.SplittableRandom;
import java.util.function.BiFunction;

/** What may be wrong with a unit of a sample shop. Severities are drawn. */
enum HiddenFault {
  NONE("nothing", (draw, unit) -> stiff(unit)),
  WEAK("its power stage is weak", with(UnitFault.WEAK_POWER_STAGE, 0.15, 0.6)),
  DRY("its output capacitors have dried out", with(UnitFault.DRIED_OUT, 0.6, 1)),
  HICCUPS("it restarts when it is loaded", with(UnitFault.HICCUPS, 0.5, 1)),
  LOW("its feedback divider has drifted: low at every load", with(UnitFault.FEEDBACK_LOW, 0.4, 1)),
  SHORT("its output is short", with(UnitFault.DEAD_SHORT, 0, 1)),
  SUPPLY(
      "nothing with the unit: the bench's own supply drops under load",
      (draw, unit) ->
          new OnTheBench(unit, Supply.stiff().withResistance(draw.severity(0.25, 0.35))));

  /** So many of the tags are good units. */
  private static final int HEALTHY_OF = 3;

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // functions without state
  private final BiFunction<UnitDraw, UnitParameters, OnTheBench> made;

  HiddenFault(String words, BiFunction<UnitDraw, UnitParameters, OnTheBench> made) {
    this.words = words;
    this.made = made;
  }

  /** The same for the same seed. */
  static HiddenFault of(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    boolean healthy = random.nextInt(HEALTHY_OF) == 0;
    return healthy ? NONE : values()[1 + random.nextInt(values().length - 1)];
  }

  OnTheBench put(UnitDraw draw, String family) {
    return made.apply(draw, draw.healthy(family));
  }

  String words() {
    return words;
  }

  private static OnTheBench stiff(UnitParameters unit) {
    return new OnTheBench(unit, Supply.stiff());
  }

  private static BiFunction<UnitDraw, UnitParameters, OnTheBench> with(
      UnitFault fault, double mild, double severe) {
    return (draw, unit) -> stiff(fault.in(unit, draw.severity(mild, severe)));
  }
}
