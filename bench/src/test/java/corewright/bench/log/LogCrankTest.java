package corewright.bench.log;

import static corewright.bench.log.LogChecks.FAILING;
import static corewright.bench.log.LogChecks.GOOD;
import static corewright.bench.log.LogChecks.isTheFailingOne;
import static corewright.bench.log.LogChecks.isTheGoodOne;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.made.Export;
import corewright.bench.log.made.Poll;
import corewright.bench.log.made.Vehicles;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where the cranks are, and whether the output was loaded in them. Each log made by us with the
 * reading it must have; what shops are sent and what it asks for are common practice, no source.
 */
class LogCrankTest {
  @Test
  void coldBadAndWarmGoodDisagreeAndTheFaultCounts() {
    LogReading reading = Logs.read(Vehicles.coldBadWarmGood(), Export.plain());
    assertEquals(
        List.of(Conclusion.SUPPORTS_FAULT, Conclusion.SUPPORTS_GOOD),
        reading.cranks().stream().map(Crank::conclusion).toList());
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion());
    assertTrue(
        reading
            .reasons()
            .contains("The cranks do not agree: 1 of 2 is supports-good. Each was judged alone."),
        reading.reasons().toString());
  }

  @Test
  void silenceExactlyInTheCrankDecidesNothing() {
    List<Poll.Shot> silent = FAILING.stream().filter(s -> s.t_s() < 5.6 || s.t_s() > 9.7).toList();
    LogReading reading = Logs.read(String.join("\n", Export.plain().lines(silent)));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("silent for"), reading.reasons().get(0));
  }

  @Test
  void withoutEngineSpeedOrWithOneStuckAtZeroTheSupplyShowsTheCrank() {
    String none =
        Logs.lines(
            "Time (s),Battery Voltage (V),Boost V",
            FAILING,
            s -> Logs.line(s.t_s(), s.supply_V(), s.output_V()));
    String stuck =
        Logs.lines(
            "Time (s),RPM,Battery Voltage (V),Boost V",
            FAILING,
            s -> Logs.line(s.t_s(), 0, s.supply_V(), s.output_V()));
    for (String text : List.of(none, stuck)) {
      LogReading reading = Logs.read(text);
      isTheFailingOne(reading);
      assertEquals("the supply alone", reading.cranks().get(0).shownBy());
      assertTrue(reading.doubts().stream().anyMatch(d -> d.contains("supply alone")));
    }
  }

  @Test
  void anEngineThatStartsIn0Point8SecondsIsTooShort() {
    Poll fast = Poll.steady(8);
    LogReading reading =
        Logs.read(String.join("\n", Export.plain().lines(fast.of(Vehicles.startsIn(0.8), 1))));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertTrue(reading.cranks().get(0).started());
    assertTrue(reading.reasons().get(0).contains("too short"), reading.reasons().get(0));
  }

  @Test
  void withoutInjectionAGoodOutputProvesNothing() {
    String header = "Time (s),RPM,Battery Voltage (V),Boost V,Injection quantity (mg/str)";
    LogReading none =
        Logs.read(
            Logs.lines(
                header, GOOD, s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), s.output_V(), 0)));
    LogReading some =
        Logs.read(
            Logs.lines(
                header,
                GOOD,
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), s.output_V(), s.fuel())));
    assertEquals(Conclusion.INCONCLUSIVE, none.conclusion());
    assertEquals(Crank.Load.INHIBITED, none.cranks().get(0).load());
    isTheGoodOne(some);
    assertEquals(Crank.Load.PROVEN, some.cranks().get(0).load());
  }

  @Test
  void anEngineThatStartsProvesTheLoadAndCrankingAloneDoesNotDisproveIt() {
    LogReading started = Logs.read(Vehicles.startsIn(5.2), Export.plain());
    LogReading cranked = Logs.read(Vehicles.good(), Export.plain());
    isTheGoodOne(started);
    assertEquals(Crank.Load.PROVEN, started.cranks().get(0).load());
    isTheGoodOne(cranked);
    assertEquals(Crank.Load.NOT_SHOWN, cranked.cranks().get(0).load());
  }

  @Test
  void anOutputThatSagsOnceTheEngineRunsSupportsAFault() {
    String text =
        Logs.lines(
            "Time (s),RPM,Battery Voltage (V),Boost V",
            Logs.shots(Vehicles.startsIn(0.8)),
            s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), s.t_s() > 6 ? 42.3 : 47.6));
    LogReading reading = Logs.read(text);
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("Once the engine ran"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"255", "1023", "65535", "16383.75"})
  void aCodeForNoSpeedIsNoTurningEngine(String code) {
    int[] row = {0};
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s ->
                    Logs.line(
                        s.t_s(),
                        row[0]++ % 7 < 2 ? code : s.speed(),
                        s.supply_V(),
                        s.output_V()))));
  }

  @ParameterizedTest
  @CsvSource({
    "Injection enabled,NO,INHIBITED",
    "Injection status,OFF,INHIBITED",
    "Einspritzung aktiv,nein,INHIBITED",
    "Cam/crank sync,no sync,INHIBITED",
    "Injection status,ON,NOT_SHOWN",
    "Sync fault,0,NOT_SHOWN",
    "Fuel level (%),0,NOT_SHOWN",
    "Fuel pressure (bar),0,NOT_SHOWN"
  })
  void whatSaysThatNothingWasInjected(String name, String cell, Crank.Load load) {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V," + name,
                GOOD,
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), s.output_V(), cell)));
    assertEquals(load, reading.cranks().get(0).load());
    assertEquals(
        load == Crank.Load.INHIBITED ? Conclusion.INCONCLUSIVE : Conclusion.SUPPORTS_GOOD,
        reading.conclusion());
  }

  @Test
  void anEngineThatTurnsOnForAMomentAfterTheStarterIsNotJudged() {
    int[] row = {0};
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s -> {
                  boolean on = s.speed() < 1 && row[0] > 0;
                  row[0] = s.speed() > 0 ? 3 : row[0] - 1;
                  return Logs.line(
                      s.t_s(), on ? 100 : s.speed(), s.supply_V(), on ? 47.9 : s.output_V());
                }));
    Output output = reading.cranks().get(0).outputs().get(0);
    assertTrue(output.last().orElseThrow().value() < 43.5, output.toString());
    assertEquals(-1.1 * 60, output.drift().orElseThrow().value(), 5);
  }
}
