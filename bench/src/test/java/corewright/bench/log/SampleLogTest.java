package corewright.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.table.Choices;
import corewright.bench.log.table.LogText;
import corewright.bench.log.table.Role;
import corewright.bench.record.Qualifier;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A log as it arrives, and the reading that the trade gives it by hand. Common practice, no source.
 */
class SampleLogTest {
  private static final String SAMPLE =
      """
      sep=;
      Log exported 03.11.2025  VIN: WXXXXXXXXXXXXXXXX
      Zeit (s);Drehzahl (1/min);Batteriespannung (V);Boost V;Öltemp (°C)
      0,00;0;12,4;47,5;-6
      0,31;0;12,4;47,5;-6
      0,62;0;11,1;47,5;---
      0,98;142;9,7;46,8;-6
      1,41;171;10,2;46,0;-6
      1,41;171;10,2;46,0;-6
      2,20;168;10,1;44,6;-6
      2,53;166;10,3;44,1;-6
      2,91;170;10,2;43,2;-6
      3,30;0;11,9;45,9;-6
      """;

  private static final LogReading READING =
      LogAnalysis.of(
          LogText.of("sample.csv", SAMPLE),
          new LogRequest(Optional.empty(), MadeFamilies.ALL, Choices.none(), Optional.empty()));

  @Test
  void itsOneCrankSupportsAFault() {
    assertEquals(Conclusion.SUPPORTS_FAULT, READING.conclusion());
    assertEquals(1, READING.cranks().size());
  }

  @Test
  void theCrankLiesFrom0Point6To3AndIsJudgedFrom1Point1To3() {
    Crank crank = READING.cranks().get(0);
    assertEquals(0.6, crank.start_s(), 0.05);
    assertEquals(3.0, crank.end_s(), 0.2);
    assertEquals(1.1, crank.window().orElseThrow().start_s(), 0.05);
    assertEquals(3.0, crank.window().orElseThrow().end_s(), 0.05);
  }

  @Test
  void theInrushIsSeenAndNotJudged() {
    Supply supply = READING.cranks().get(0).supplies().get(0);
    assertEquals(9.7, supply.lowest().orElseThrow().value(), 1e-9);
    assertEquals(10.2, supply.minimum().orElseThrow().value(), 0.1 + 1e-9);
    assertEquals(Qualifier.VALID, supply.qualifier().orElseThrow());
  }

  @Test
  void theOutputFallsFrom46Point8To43Point2AndRecovers() {
    Output output = READING.cranks().get(0).outputs().get(0);
    assertEquals(43.2, output.last().orElseThrow().value(), 1e-9);
    assertEquals(43.7, output.lowestQuarter().orElseThrow().value(), 0.06);
    assertEquals(-1.9 * 60, output.drift().orElseThrow().value(), 0.1 * 60);
    assertEquals(45.9, output.recovered().orElseThrow().value(), 1e-9);
    assertEquals(4, output.samples());
  }

  @Test
  void theRepeatedRowIsLeftOutAndTheShortRecordIsSaid() {
    assertTrue(READING.remarks().get(0).startsWith("1 row repeats"), READING.remarks().toString());
    assertTrue(
        READING.doubts().stream().anyMatch(d -> d.contains("short record: 4 distinct samples")),
        READING.doubts().toString());
  }

  @Test
  void theBenchStandsAboveIt() {
    assertTrue(READING.reasons().contains(LogReading.NOT_ABOVE_THE_BENCH));
  }

  @Test
  void whatIsSaidOfTheVehicleIsNowhere() {
    assertFalse(READING.toString().contains("WXXXX"));
  }

  @Test
  void everyColumnIsTakenForSomething() {
    assertEquals(
        List.of(Role.TIME, Role.SPEED, Role.SUPPLY, Role.OUTPUT, Role.NONE),
        READING.columns().stream().map(c -> c.role()).toList());
  }

  @Test
  void theSameTextGivesTheSameAnswer() {
    LogReading again =
        LogAnalysis.of(
            LogText.of("sample.csv", SAMPLE),
            new LogRequest(Optional.empty(), MadeFamilies.ALL, Choices.none(), Optional.empty()));
    assertEquals(READING.toString(), again.toString());
  }
}
