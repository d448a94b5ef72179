package corewright.bench.log;

import static corewright.bench.log.LogChecks.FAILING;
import static corewright.bench.log.LogChecks.isTheFailingOne;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.made.Export;
import corewright.bench.log.made.Poll;
import corewright.bench.log.made.Story;
import corewright.bench.log.made.Vehicle;
import corewright.bench.log.made.Vehicles;
import corewright.bench.log.table.Choices;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the output did, and whether it was measured at all. Each log made by us with the reading it
 * must have; what shops are sent and what it asks for are common practice, no source.
 */
class LogOutputTest {
  @Test
  void heldValuesCountOnce() {
    List<Poll.Shot> fast = new Poll(20, false, 0, 0, 0.1, 0.1, 0.04).of(Vehicles.failing(), 2);
    int[] row = {0};
    double[] held = {0};
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                fast,
                s -> {
                  held[0] = row[0]++ % 10 == 0 ? s.output_V() : held[0];
                  return Logs.line(s.t_s(), s.speed(), s.supply_V(), held[0]);
                }));
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion());
    // 4.4 s are judged, and every half second there is a new value.
    assertEquals(9, reading.cranks().get(0).outputs().get(0).samples(), 1);
    assertTrue(reading.doubts().stream().anyMatch(d -> d.contains("for about 10 rows")));
  }

  @Test
  void stepsOfHalfAVoltTellAFallAndNotAWeakUnit() {
    Poll coarse = new Poll(4, false, 0, 0, 0.1, 0.5, 0.04);
    Vehicle weak = Vehicles.one(10.5, t -> 46.4 - 0.25 * t, false);
    assertEquals(
        Conclusion.SUPPORTS_FAULT,
        Logs.read(String.join("\n", Export.plain().lines(coarse.of(Vehicles.failing(), 1))))
            .conclusion());
    assertEquals(
        Conclusion.INCONCLUSIVE,
        Logs.read(String.join("\n", Export.plain().lines(coarse.of(weak, 1)))).conclusion());
  }

  @Test
  void anOutputCutOffAt50IsNotMeasured() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s ->
                    Logs.line(s.t_s(), s.speed(), s.supply_V(), Math.min(50.0, s.output_V() + 4))));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("cuts it off"), reading.reasons().get(0));
  }

  @Test
  void anOutputThatNeverMovesIsNotTakenAsMeasured() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), 48.0)));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("does not move"), reading.reasons().get(0));
  }

  @Test
  void scatterAboutAGoodMiddleMayBeLostCapacitance() {
    Poll slow = new Poll(5, false, 0, 0, 0.1, 0.1, 1.2);
    LogReading reading =
        Logs.read(String.join("\n", Export.plain().lines(slow.of(Vehicles.good(), 3))));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("capacitance"), reading.reasons().get(0));
  }

  @Test
  void noDataCodesAreNoVolts() {
    int[] row = {0};
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s -> {
                  int n = row[0]++;
                  return Logs.line(
                      s.t_s(),
                      n % 9 == 4 ? "65535" : s.speed(),
                      n % 7 == 3 ? "65.535" : n % 11 == 5 ? "0" : s.supply_V(),
                      n % 8 == 2 ? "127.5" : n % 13 == 6 ? "#REF!" : s.output_V());
                }));
    isTheFailingOne(reading);
  }

  @Test
  void otherFamiliesAreScaled() {
    for (double nominal_V : new double[] {65, 110}) {
      String id = nominal_V > 100 ? "ie110" : "pv65";
      LogReading bad = Logs.read(Vehicles.ofFamily(nominal_V, Story.FAULT), Export.plain());
      LogReading good = Logs.read(Vehicles.ofFamily(nominal_V, Story.GOOD), Export.plain());
      LogReading low = Logs.read(Vehicles.ofFamily(nominal_V, Story.VOID), Export.plain());
      assertEquals(Conclusion.SUPPORTS_FAULT, bad.conclusion());
      assertEquals(Conclusion.SUPPORTS_GOOD, good.conclusion());
      assertEquals(Conclusion.VOID, low.conclusion());
      assertEquals(id, good.family().orElseThrow().id());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "3276.7",
        "8191",
        "127",
        "88.8",
        "99999",
        "2147483647",
        "4294967295",
        "3.4E38",
        "-9999",
        "1.#QNAN",
        "n/v",
        "No Resp",
        "0xFFFF",
        "--.-",
        "∞"
      })
  void everyToolHasItsOwnWayToSayThatThereIsNone(String code) {
    int[] row = {0};
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s -> {
                  int n = row[0]++;
                  return Logs.line(
                      s.t_s(),
                      s.speed(),
                      n % 9 == 3 ? code : s.supply_V(),
                      n % 8 == 2 ? code : s.output_V());
                })));
  }

  @Test
  void theOutputOfAnotherFamilyIsNeverScaledDownToTheNamedOne() {
    String text =
        String.join("\n", Export.plain().lines(Logs.shots(Vehicles.ofFamily(110, Story.GOOD))));
    LogReading reading = Logs.read(text, Choices.none(), Optional.of(MadeFamilies.SD48));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion(), reading.reasons().toString());
    assertTrue(reading.cranks().stream().allMatch(c -> c.outputs().isEmpty()));
  }
}
