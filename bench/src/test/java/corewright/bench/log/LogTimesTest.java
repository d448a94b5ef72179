package corewright.bench.log;

import static corewright.bench.log.LogChecks.FAILING;
import static corewright.bench.log.LogChecks.export;
import static corewright.bench.log.LogChecks.isTheFailingOne;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.made.Language;
import corewright.bench.log.made.Layout;
import corewright.bench.log.made.Stamp;
import corewright.bench.log.made.Vehicles;
import corewright.bench.log.table.Choices;
import corewright.bench.log.table.Role;
import corewright.files.BadFile;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a log calls its time. Each log made by us with the reading it must have; what shops are sent
 * and what it asks for are common practice, no source.
 */
class LogTimesTest {
  @ParameterizedTest
  @EnumSource(
      value = Stamp.class,
      names = {"FRAMES"},
      mode = EnumSource.Mode.EXCLUDE)
  void withEveryKindOfTime(Stamp stamp) {
    isTheFailingOne(
        Logs.read(Vehicles.failing(), export(Language.ENGLISH, ',', stamp, Layout.PLAIN, false)));
  }

  /**
   * Where the decimal mark is the delimiter too, what follows the seconds stands in another piece.
   */
  @ParameterizedTest
  @EnumSource(
      value = Stamp.class,
      names = {"FRAMES"},
      mode = EnumSource.Mode.EXCLUDE)
  void withEveryKindOfTimeAndCommasForEverything(Stamp stamp) {
    isTheFailingOne(
        Logs.read(
            Vehicles.failing(), export(Language.GERMAN, ',', stamp, Layout.COMMA_PAIRS, false)));
  }

  @Test
  void framesAloneAreRefusedUntilARateIsTyped() {
    String text =
        String.join(
            "\n", export(Language.ENGLISH, ',', Stamp.FRAMES, Layout.PLAIN, false).lines(FAILING));
    BadFile refused = assertThrows(BadFile.class, () -> Logs.read(text));
    assertEquals(1, refused.mistakes().get(0).line());
    assertEquals("column 1", refused.mistakes().get(0).where());
    assertTrue(refused.getMessage().contains("--rate"), refused.getMessage());
    LogReading reading = Logs.read(text, rate(4), Optional.empty());
    isTheFailingOne(reading);
    assertTrue(reading.time().assumed());
    assertTrue(reading.doubts().stream().anyMatch(d -> d.contains("assumed")));
  }

  private static Choices rate(double rate_Hz) {
    return new Choices(
        Optional.empty(), Optional.empty(), OptionalDouble.of(rate_Hz), Map.of(), Map.of());
  }

  @Test
  void daysOfASpreadsheetAreTimesAndDatesInPlaceOfVoltsAreNot() {
    isTheFailingOne(
        Logs.read(
            Vehicles.failing(),
            export(Language.GERMAN, ';', Stamp.SPREADSHEET_DAYS, Layout.PLAIN, false)));
    LogReading mangled =
        Logs.read(
            Logs.lines(
                "Time (s),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s -> Logs.line(s.t_s(), s.speed(), asDate(s.supply_V()), s.output_V())));
    assertEquals(Conclusion.INCONCLUSIVE, mangled.conclusion());
    assertEquals(Role.NO_SCALE, mangled.columns().get(2).role());
    assertTrue(mangled.columns().get(2).why().contains("dates"));
  }

  /** 10.2 becomes the 10th of February. */
  private static String asDate(double value_V) {
    List<String> months = List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep");
    int tenths = (int) Math.round(value_V * 10) % 10;
    int whole = (int) (Math.round(value_V * 10) / 10);
    return tenths == 0 ? String.valueOf(whole) : whole + "-" + months.get(tenths - 1);
  }

  /** 1,250 ms are twelve hundred and fifty; the column tells, no cell can. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "ch"})
  void thousandsInMillisecondsAreNoDecimals(String where) {
    for (int later_ms : new int[] {0, 1_234_000}) {
      isTheFailingOne(
          Logs.read(
              Logs.lines(
                  "Time (ms);RPM;Battery Voltage (V);Boost V",
                  FAILING,
                  s ->
                      thousands(Math.round(1000 * s.t_s()) + later_ms, where)
                          + ";"
                          + Logs.line(s.speed(), s.supply_V(), s.output_V()).replace(',', ';'))));
    }
  }

  private static String thousands(long value, String where) {
    String english = String.format(Locale.ROOT, "%,d", value);
    return switch (where) {
      case "de" -> english.replace(',', '.');
      case "ch" -> english.replace(',', '\'');
      default -> english;
    };
  }

  @Test
  void fractionsOfAMillisecondAreStillFractions() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (ms),RPM,Battery Voltage (V),Boost V",
                FAILING,
                s ->
                    String.format(Locale.ROOT, "%.3f", 1000 * s.t_s())
                        + ","
                        + Logs.line(s.speed(), s.supply_V(), s.output_V())));
    isTheFailingOne(reading);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Date", "Datum", "Date/Time"})
  void daysCountedByASpreadsheetMayBeCalledADate(String name) {
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                name + ",RPM,Battery Voltage (V),Boost V",
                FAILING,
                s ->
                    String.format(Locale.ROOT, "%.10f", 45_964.5 + s.t_s() / 86_400)
                        + ","
                        + Logs.line(s.speed(), s.supply_V(), s.output_V()))));
  }

  @Test
  void aColumnOfMillisecondsThatBeginsAnewEachSecondIsNoTime() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Date,Time,ms,RPM,Battery Voltage (V),Boost V",
                FAILING,
                s ->
                    "03.11.2025,13:05:"
                        + String.format(Locale.ROOT, "%02d,", (int) Math.floor(s.t_s()))
                        + Math.round(1000 * (s.t_s() - Math.floor(s.t_s())))
                        + ","
                        + Logs.line(s.speed(), s.supply_V(), s.output_V())));
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion());
    assertEquals("Time", reading.time().column());
  }

  @Test
  void aClockWithDotsAndOneThatCountsToATriggerAreTimes() {
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Time,RPM,Battery Voltage (V),Boost V",
                FAILING,
                s ->
                    String.format(Locale.ROOT, "13.05.%06.3f,", s.t_s())
                        + Logs.line(s.speed(), s.supply_V(), s.output_V()))));
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                "Elapsed,RPM,Battery Voltage (V),Boost V",
                FAILING,
                s ->
                    (s.t_s() < 5 ? "-" : "")
                        + String.format(Locale.ROOT, "00:00:%06.3f,", Math.abs(s.t_s() - 5))
                        + Logs.line(s.speed(), s.supply_V(), s.output_V()))));
  }

  @Test
  void extremesUnderTheRowsDoNotHideDaysOfASpreadsheet() {
    isTheFailingOne(
        Logs.read(
            Logs.lines(
                    "Time,RPM,Battery Voltage (V),Boost V",
                    FAILING,
                    s ->
                        String.format(Locale.ROOT, "%.9f", 45_964.5 + s.t_s() / 86_400)
                            + ","
                            + Logs.line(s.speed(), s.supply_V(), s.output_V()))
                + "\n\nMin,0,9.8,42.1\n0,0,0,0\n180,180,180,180\n"));
  }
}
