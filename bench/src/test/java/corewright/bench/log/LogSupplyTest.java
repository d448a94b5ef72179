package corewright.bench.log;

import static corewright.bench.log.LogChecks.FAILING;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.made.Export;
import corewright.bench.log.made.Vehicles;
import org.junit.jupiter.api.Test;

/**
 * The input qualifier of a log. Each log made by us with the reading it must have; what shops are
 * sent and what it asks for are common practice, no source.
 */
class LogSupplyTest {
  @Test
  void aSupplyThatCollapsesTo8Point2IsVoid() {
    LogReading reading = Logs.read(Vehicles.fedWith(8.2), Export.plain());
    assertEquals(Conclusion.VOID, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("fell to 8."), reading.reasons().get(0));
    assertTrue(reading.reasons().get(0).contains("below 9.0"), reading.reasons().get(0));
  }

  @Test
  void aTolerableSupplySupportsAndDoesNotProve() {
    LogReading reading = Logs.read(Vehicles.fedWith(9.5), Export.plain());
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion());
    assertTrue(
        reading
            .doubts()
            .contains("The supply was only tolerable: this supports and does not prove."),
        reading.doubts().toString());
  }

  @Test
  void everySupplyIsQualifiedAndTheWorstCounts() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Logic supply (V),Module supply (V),Boost V",
                FAILING,
                s ->
                    Logs.line(
                        s.t_s(),
                        s.speed(),
                        s.supply_V(),
                        s.supply_V() - 0.2,
                        s.supply_V() - (s.speed() > 0 ? 2 : 0.1),
                        s.output_V())));
    assertEquals(Conclusion.VOID, reading.conclusion());
    assertEquals(3, reading.cranks().get(0).supplies().size());
    assertEquals("Module supply (V)", reading.cranks().get(0).supplies().get(0).name());
    assertTrue(reading.doubts().stream().anyMatch(d -> d.contains("do not agree")));
  }

  /** Two readings in turn are not one that is held; "in every sample" must be so. */
  @Test
  void aSupplyIsOnlySaidToStandStillWhereItDoes() {
    for (double other_V : new double[] {0, 0.05}) {
      LogReading reading =
          Logs.read(
              Logs.lines(
                  "Time (s),RPM,Battery Voltage (V),Boost V",
                  FAILING,
                  s ->
                      Logs.line(
                          s.t_s(),
                          s.speed(),
                          s.speed() > 0 ? 10.6 + (Math.round(s.t_s() * 4) % 2) * other_V : 12.5,
                          s.output_V())));
      assertEquals(
          other_V == 0,
          reading.doubts().stream().anyMatch(d -> d.contains("in every sample of the crank")),
          reading.doubts().toString());
    }
  }

  @Test
  void withoutAnySupplyAFallIsNotTheModules() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Boost V", FAILING, s -> Logs.line(s.t_s(), s.speed(), s.output_V())));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("nothing is known of the supply"));
  }

  @Test
  void aDongleThatReadsLowDoesNotOutweighTheSupplyAtTheModule() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,OBD adapter voltage (V),Module supply (V),Boost V",
                FAILING,
                s ->
                    Logs.line(
                        s.t_s(),
                        s.speed(),
                        s.supply_V() - (s.speed() > 0 ? 2 : 0.1),
                        s.supply_V(),
                        s.output_V())));
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion(), reading.reasons().toString());
    assertTrue(
        reading.doubts().stream().anyMatch(d -> d.contains("nearer to the module was taken")));
  }

  @Test
  void aSupplyThatSaysTheSameAllThroughTheCrankIsDoubted() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s -> Logs.line(s.t_s(), s.speed(), Math.max(10.6, s.supply_V()), s.output_V())));
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion(), reading.reasons().toString());
    assertTrue(reading.doubts().stream().anyMatch(d -> d.contains("in every sample")));
  }

  @Test
  void withoutAnOutputTheSupplyIsHeldToAFamilyOfAsManyBatteries() {
    LogReading low =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V)",
                Logs.shots(Vehicles.fedWith(8.2)),
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V())));
    assertEquals(Conclusion.VOID, low.conclusion());
  }
}
