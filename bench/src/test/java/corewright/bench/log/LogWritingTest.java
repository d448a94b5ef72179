package corewright.bench.log;

import static corewright.bench.log.LogChecks.FAILING;
import static corewright.bench.log.LogChecks.export;
import static corewright.bench.log.LogChecks.isTheFailingOne;
import static corewright.bench.log.LogChecks.isTheGoodOne;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.bench.log.made.Export;
import corewright.bench.log.made.Language;
import corewright.bench.log.made.Layout;
import corewright.bench.log.made.Stamp;
import corewright.bench.log.made.Vehicles;
import corewright.bench.log.table.Role;
import corewright.files.BadFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How a log is written down: languages, delimiters, headers, cells. Each log made by us with the
 * reading it must have; what shops are sent and what it asks for are common practice, no source.
 */
class LogWritingTest {
  @Test
  void clean() {
    isTheFailingOne(Logs.read(Vehicles.failing(), Export.plain()));
    isTheGoodOne(Logs.read(Vehicles.good(), Export.plain()));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void inManyLanguagesWithSemicolons(Language language) {
    isTheFailingOne(
        Logs.read(Vehicles.failing(), export(language, ';', Stamp.SECONDS, Layout.PLAIN, false)));
  }

  @ParameterizedTest
  @EnumSource(value = Layout.class)
  void inEveryLayoutWithDecimalCommas(Layout layout) {
    char delimiter = layout == Layout.QUOTED || layout == Layout.COMMA_PAIRS ? ',' : ';';
    isTheFailingOne(
        Logs.read(
            Vehicles.failing(), export(Language.GERMAN, delimiter, Stamp.SECONDS, layout, false)));
  }

  @Test
  void lostDecimalMarksAreNeverReadAsTenTimesTheVolts() {
    String text =
        Logs.lines(
            "Time (s),RPM,Battery Voltage (V),Boost V",
            FAILING,
            s ->
                Logs.line(
                    Math.round(100 * s.t_s()),
                    s.speed(),
                    Math.round(10 * s.supply_V()),
                    Math.round(10 * s.output_V())));
    assertThrows(BadFile.class, () -> Logs.read(text));
    String some =
        Logs.lines(
            "Time (s),RPM,Battery Voltage (V),Boost V",
            FAILING,
            s ->
                Logs.line(
                    s.t_s(),
                    s.speed(),
                    s.supply_V(),
                    s.output_V() == Math.rint(s.output_V())
                        ? String.valueOf(Math.round(s.output_V()))
                        : String.valueOf(Math.round(10 * s.output_V()))));
    LogReading reading = Logs.read(some);
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertEquals(Role.NO_SCALE, reading.columns().get(3).role());
  }

  @Test
  void whoAndWhereIsDroppedAndFormulasAreInert() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),Latitude,Longitude,VIN,Driver name,RPM,Battery Voltage (V),Boost"
                    + " V,=cmd|'/C x'!A0",
                FAILING,
                s ->
                    Logs.line(
                        s.t_s(),
                        "48.137154",
                        "11.576124",
                        "WXXXX11X1XW000001",
                        "A. Person",
                        s.speed(),
                        s.supply_V(),
                        s.output_V(),
                        "=1+1")));
    isTheFailingOne(reading);
    for (int c = 1; c <= 4; c++) {
      assertEquals(Role.PERSONAL, reading.columns().get(c).role());
    }
    String all = reading.toString();
    assertFalse(all.contains("48.13") || all.contains("WXXXX") || all.contains("Person"), all);
    assertEquals("'=cmd|'/C x'!A0", reading.columns().get(8).title());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ECU 0,ECU 0,ECU 0,ECU 17",
        "float,uint16,float,float",
        ",0x0C,0x42,0xF4A1",
        "Min,0,9.8,42.1"
      })
  void aSecondRowUnderTheNamesIsNotTheNames(String second) {
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V\n" + second,
                FAILING,
                s -> Logs.line(s.t_s(), s.speed(), s.supply_V(), s.output_V()))));
  }

  @Test
  void tabsBetweenSpacesLeaveNothingToAsk() {
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Time (s)  \tRPM  \tBattery Voltage (V)  \tBoost V",
                FAILING,
                s ->
                    Logs.line(s.t_s(), s.speed(), s.supply_V(), s.output_V())
                        .replace(",", "  \t"))));
  }

  @Test
  void rowsThatOnlyMarkAnEventAreNoData() {
    int[] row = {0};
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s ->
                    Logs.line(s.t_s(), s.speed(), s.supply_V(), s.output_V())
                        + (row[0]++ % 10 == 4 ? "\n5.0,KEY ON,," : "")));
    isTheFailingOne(reading);
  }

  @Test
  void unitsUnderAHeaderThatComesAgainAreNoHeaderOfTheirOwn() {
    List<String> lines =
        new java.util.ArrayList<>(
            Logs.lines(
                    "Time,RPM,Battery,Boost\nms,rpm,V,V",
                    FAILING,
                    s ->
                        Logs.line(
                            Math.round(1000 * s.t_s()), s.speed(), s.supply_V(), s.output_V()))
                .lines()
                .toList());
    lines.addAll(lines.size() - 6, List.copyOf(lines.subList(0, 2)));
    isTheFailingOne(Logs.read(String.join("\n", lines)));
  }
}
