package corewright.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.made.Export;
import corewright.bench.log.made.Language;
import corewright.bench.log.made.Layout;
import corewright.bench.log.made.Poll;
import corewright.bench.log.made.Stamp;
import corewright.bench.log.made.Story;
import corewright.bench.log.made.Vehicle;
import corewright.bench.log.made.Vehicles;
import corewright.bench.log.table.Choices;
import corewright.bench.log.table.Role;
import corewright.files.BadFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every kind of log that a shop is sent, made by us, each with the reading it must have. The kinds
 * and what they ask for are common practice, no source.
 */
class LogKindsTest {
  private static final List<Poll.Shot> FAILING = Logs.shots(Vehicles.failing());
  private static final List<Poll.Shot> GOOD = Logs.shots(Vehicles.good());

  private static Export export(
      Language language, char delimiter, Stamp stamp, Layout layout, boolean milli) {
    return new Export(language, delimiter, stamp, layout, milli, false, "8", "\n");
  }

  /** The crank that really was, and how far the output really fell, whatever the export did. */
  private static void isTheFailingOne(LogReading reading) {
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion(), reading.reasons().toString());
    assertEquals(1, reading.cranks().size());
    Crank crank = reading.cranks().get(0);
    assertEquals(Vehicles.LENGTH_S, crank.end_s() - crank.start_s(), 0.5);
    Output output = crank.outputs().get(0);
    assertEquals(-1.1 * 60, output.drift().orElseThrow().value(), 5);
    assertEquals(42.7, output.lowestQuarter().orElseThrow().value(), 0.4);
    assertEquals(10.4, crank.supplies().get(0).minimum().orElseThrow().value(), 0.15);
  }

  private static void isTheGoodOne(LogReading reading) {
    assertEquals(Conclusion.SUPPORTS_GOOD, reading.conclusion(), reading.reasons().toString());
    Output output = reading.cranks().get(0).outputs().get(0);
    assertEquals(47.5, output.lowestQuarter().orElseThrow().value(), 0.15);
    assertEquals(0, output.drift().orElseThrow().value(), 3);
  }

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

  @ParameterizedTest
  @EnumSource(
      value = Stamp.class,
      names = {"FRAMES"},
      mode = EnumSource.Mode.EXCLUDE)
  void withEveryKindOfTime(Stamp stamp) {
    isTheFailingOne(
        Logs.read(Vehicles.failing(), export(Language.ENGLISH, ',', stamp, Layout.PLAIN, false)));
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
  void silenceExactlyInTheCrankDecidesNothing() {
    List<Poll.Shot> silent = FAILING.stream().filter(s -> s.t_s() < 5.6 || s.t_s() > 9.7).toList();
    LogReading reading = Logs.read(String.join("\n", Export.plain().lines(silent)));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("silent for"), reading.reasons().get(0));
  }

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
  void scatterAboutAGoodMiddleMayBeLostCapacitance() {
    Poll slow = new Poll(5, false, 0, 0, 0.1, 0.1, 1.2);
    LogReading reading =
        Logs.read(String.join("\n", Export.plain().lines(slow.of(Vehicles.good(), 3))));
    assertEquals(Conclusion.INCONCLUSIVE, reading.conclusion());
    assertTrue(reading.reasons().get(0).contains("capacitance"), reading.reasons().get(0));
  }

  @Test
  void whoAndWhereIsDroppedAndFormulasAreInert() {
    LogReading reading =
        Logs.read(
            Logs.lines(
                "Time (s),Latitude,Longitude,VIN,Driver name,RPM,Battery Voltage (V),Boost V,=cmd|'/C x'!A0",
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
}
