package corewright.bench.log;

import static corewright.bench.log.LogChecks.FAILING;
import static corewright.bench.log.LogChecks.GOOD;
import static corewright.bench.log.LogChecks.export;
import static corewright.bench.log.LogChecks.isTheFailingOne;
import static corewright.bench.log.LogChecks.isTheGoodOne;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.made.Language;
import corewright.bench.log.made.Layout;
import corewright.bench.log.made.Stamp;
import corewright.bench.log.made.Vehicles;
import corewright.bench.log.table.Choices;
import corewright.bench.log.table.Role;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a column is taken for. Each log made by us with the reading it must have; what shops are
 * sent and what it asks for are common practice, no source.
 */
class LogNamesTest {
  @Test
  void aManifoldPressureCalledBoostIsNoOutput() {
    for (String name : List.of("Boost (kPa)", "Boost", "Boost pressure", "Ladedruck")) {
      LogReading reading =
          Logs.read(
              Logs.lines(
                  "Time (s),RPM,Battery Voltage (V)," + name,
                  FAILING,
                  s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), s.speed() > 0 ? 98.4 : 100.2)));
      assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
      assertTrue(
          reading.reasons().contains("The output is not in this log."),
          name + ": " + reading.reasons());
    }
  }

  @Test
  void millivoltsAreFoundInTheNameOrByTheRange() {
    isTheFailingOne(
        Logs.read(
            Vehicles.failing(), export(Language.ENGLISH, ',', Stamp.SECONDS, Layout.PLAIN, true)));
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage,Inj driver volt",
                FAILING,
                s ->
                    Logs.line(
                        s.t_s(),
                        s.speed(),
                        Math.round(1000 * s.supply_V()),
                        Math.round(1000 * s.output_V())))));
  }

  @Test
  void anOutputAsCommandedIsNotMeasured() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Commanded Boost V",
                FAILING,
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), 48.0)));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertEquals(Role.COMMANDED, reading.columns().get(3).role());
  }

  @Test
  void countsNeedAScaleThatAPersonGives() {
    String text =
        Logs.lines(
            "Time (s),RPM,Battery Voltage (V),Boost (counts)",
            FAILING,
            s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), Math.round(s.output_V() / 0.0489)));
    assertEquals(Conclusion.INCONCLUSIVE, Logs.read(text).conclusion());
    Choices scale =
        new Choices(
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Map.of(),
            Map.of(Role.OUTPUT, "0.0489 V"));
    isTheFailingOne(Logs.read(text, scale, Optional.empty()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Boost control duty",
        "Boost valve position",
        "Boost deviation",
        "Boost load",
        "Brake booster",
        "Output torque",
        "Output power",
        "Torque converter slip",
        "Injection angle",
        "Injector duty cycle",
        "Driver seat position",
        "Idle valve output",
        "Endstufe Temperatur",
        "HV battery SOC"
      })
  void whatIsOnlyCalledLikeTheOutputIsNotTakenForIt(String name) {
    // Rests near 48 and falls in the crank, as a bad output would.
    LogReading alone =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V)," + name,
                GOOD,
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), 47.5 - 0.03 * s.speed())));
    assertEquals(Conclusion.INCONCLUSIVE, alone.conclusion(), alone.reasons().toString());
    assertTrue(alone.cranks().get(0).outputs().isEmpty());
    LogReading beside =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V)," + name + ",Boost V",
                GOOD,
                s ->
                    Logs.line(
                        s.t_s(), s.speed(), s.supply_V(), 47.5 - 0.03 * s.speed(), s.output_V())));
    isTheGoodOne(beside);
    assertEquals(1, beside.cranks().get(0).outputs().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Boost",
        "HV supply",
        "Driver 48V",
        "7E0.VBOOST",
        "Coil feed",
        "Boost actual bank 1",
        "Ausgang Wandler",
        "Inj driver feed"
      })
  void theOutputIsFoundByItsNameAloneWhereNothingSpeaksAgainstIt(String name) {
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V)," + name,
                FAILING,
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), s.output_V()))));
  }

  @ParameterizedTest
  @CsvSource({
    "Boost Soll (V),Boost Ist (V)",
    "Boost voltage target,Boost voltage",
    "Boost V (cmd),Boost V",
    "Tension boost consigne (V),Tension boost (V)",
    "Requested boost voltage (V),Actual boost voltage (V)"
  })
  void ofCommandedAndMeasuredTheMeasuredIsTaken(String commanded, String measured) {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V)," + commanded + "," + measured,
                FAILING,
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), 48.0, s.output_V())));
    isTheFailingOne(reading);
    assertEquals(Role.COMMANDED, reading.columns().get(3).role());
  }

  @Test
  void aToolThatRangesByItselfIsReadCellByCell() {
    int[] row = {0};
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Time,RPM,Battery,Boost",
                FAILING,
                s ->
                    Logs.line(
                        s.t_s(),
                        s.speed(),
                        String.format(Locale.ROOT, "%.1f V", s.supply_V()),
                        row[0]++ % 3 == 0
                            ? String.format(Locale.ROOT, "%.0f mV", 1000 * s.output_V())
                            : String.format(Locale.ROOT, "%.1f V", s.output_V())))));
  }
}
