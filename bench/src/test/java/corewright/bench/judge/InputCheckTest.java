package corewright.bench.judge;

import static corewright.bench.judge.Invented.OUTPUT_FULL;
import static corewright.bench.judge.Invented.hold;
import static corewright.bench.judge.Invented.run;
import static corewright.bench.judge.Invented.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.judge.Invented.Hold;
import corewright.bench.record.Judgement;
import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Profile.Purpose;
import corewright.profiles.Step;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InputCheckTest {
  private static final Hold REST = hold(0, 48, 12.5);

  /** Zones of the invented family: good from 10 V, tolerated from 9 V. */
  @ParameterizedTest
  @CsvSource({
    "12.5, 12.2, VALID",
    "12.5, 10.0, VALID",
    "12.5, 9.99, TOLERATED",
    "12.5, 9.0, TOLERATED",
    "12.5, 8.99, VOID",
    "8.5, 12.5, VOID",
  })
  void aRunIsAsGoodAsItsWorstHold(double rest_V, double full_V, Qualifier expected) {
    Judgement judged =
        judge(plain(step(0, 12.5), step(3, 12.5)), hold(0, 48, rest_V), hold(3, 47.5, full_V));
    assertEquals(Optional.of(expected), judged.qualifier());
  }

  @Test
  void aHoldThatIsNotJudgedDoesNotCount() {
    Profile profile = plain(step(0, 12.5, false), step(3, 12.5));
    assertEquals(
        Optional.of(Qualifier.VALID),
        judge(profile, hold(0, 48, 2), hold(3, 47.5, 12)).qualifier());
  }

  @Test
  void everyFeedCounts() {
    Profile two =
        Invented.profile(
            Purpose.ARRIVAL, false, List.of("main", "keyed"), List.of(step(3, 12.5)), OUTPUT_FULL);
    Judgement sagging = judge(two, feeds(Map.of("main", volts(12.4), "keyed", volts(8.4))));
    assertEquals(Optional.of(Verdict.VOID), sagging.verdict());
    assertTrue(sagging.reasons().get(0).startsWith("The supply feed keyed fell to 8.40 ± 0.02 V"));
    Judgement absent = judge(two, feeds(Map.of("main", volts(12.4))));
    assertEquals(Optional.of(Verdict.VOID), absent.verdict());
    assertTrue(absent.reasons().get(0).startsWith("The supply feed keyed was not read"));
    assertTrue(absent.reasons().get(1).startsWith("Connect its sense leads"));
    assertEquals(
        Optional.of(Verdict.PASS),
        judge(two, feeds(Map.of("main", volts(12.4), "keyed", volts(12.1)))).verdict());
  }

  @Test
  void anInputThatWasNotReadIsNotTakenForGood() {
    Judgement judged =
        judge(plain(step(3, 12.5)), feeds(Map.of("input", Reading.none("samples are missing"))));
    assertEquals(Optional.of(Verdict.VOID), judged.verdict());
    assertEquals(
        Optional.empty(), judged.qualifier(), "not known: the bench is in doubt, not the supply");
    assertEquals(
        "The supply feed input was not read at 3.00 A (samples are missing): without it nothing is"
            + " said about the unit.",
        judged.reasons().get(0));
    assertTrue(judged.reasons().get(1).startsWith("Repeat the test; if samples are lost again"));
  }

  @Test
  void aProfileThatDropsTheSupplySaysHowFar() {
    Profile cranking =
        Invented.profile(
            Purpose.ARRIVAL,
            true,
            List.of("input"),
            List.of(step(0, 12.6), step(3, 12.6), step(3, 8)),
            OUTPUT_FULL);
    Judgement asDeclared = judge(cranking, REST, hold(3, 47.5, 7.93));
    assertEquals(Optional.of(Verdict.PASS), asDeclared.verdict());
    assertEquals(Optional.of(Qualifier.VALID), asDeclared.qualifier());
    assertTrue(
        asDeclared
            .reasons()
            .contains("The input dropped to 7.93 ± 0.02 V at 3.00 A, as the profile asks."));
    // the drop that it asks for is no excuse for the unit
    assertEquals(Optional.of(Verdict.FAIL), judge(cranking, REST, hold(3, 43, 7.93)).verdict());
    // nor is a deeper one the unit's fault
    assertEquals(Optional.of(Verdict.VOID), judge(cranking, REST, hold(3, 43, 7.0)).verdict());
    // and a hold without a drop is held to the family's zones
    assertEquals(
        Optional.of(Verdict.VOID),
        judge(cranking, hold(0, 48, 7.93), hold(3, 47.5, 7.93)).verdict());
  }

  @Test
  void theSameRecordIsVoidWhereTheProfileDropsNothing() {
    assertEquals(
        Optional.of(Verdict.VOID),
        judge(plain(step(0, 12.6), step(3, 12.6)), REST, hold(3, 47.5, 7.93)).verdict());
  }

  private static Hold feeds(Map<String, Reading> feeds) {
    return new Hold(3, 47.5, 0.01, feeds);
  }

  private static Reading volts(double value) {
    return Reading.of(value, 0.01, Unit.VOLT);
  }

  private static Profile plain(Step... steps) {
    return Invented.profile(Purpose.ARRIVAL, false, List.of("input"), List.of(steps), OUTPUT_FULL);
  }

  private static Judgement judge(Profile profile, Hold... holds) {
    return Judge.judge(run(holds), Invented.family(), profile, RunEnd.completed(8));
  }

  /** The three zones of the trade: 10 V and above, 9 to 10 V, below 9 V. */
  @ParameterizedTest
  @CsvSource({
    "10.20, 47.5, VALID, PASS",
    "10.20, 44.0, VALID, FAIL",
    "9.50, 47.5, TOLERATED, PASS",
    "9.50, 44.0, TOLERATED, VOID",
    "8.50, 47.5, VOID, VOID",
    "8.50, 44.0, VOID, VOID"
  })
  void aCrankingIsJudgedByItsOwnInput(
      double input_V, double output_V, Qualifier qualifier, Verdict verdict) {
    Limit cranking =
        new Limit(
            "crank", Quantity.CRANK_OUTPUT, Limit.Side.AT_LEAST, 46.5, 45, 0, 9, false, "test");
    MeasuredRun holds = Invented.run(REST, hold(3, 47.5, 12));
    MeasuredRun run =
        new MeasuredRun(
            holds.sampleRate_Hz(),
            holds.samples(),
            holds.uBasis(),
            holds.holds(),
            Map.of(Quantity.CRANK_INPUT, volts(input_V), Quantity.CRANK_OUTPUT, volts(output_V)),
            List.of());
    Judgement judged =
        Judge.judge(
            run,
            Invented.family(),
            Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL, cranking),
            RunEnd.completed(9));
    assertEquals(Optional.of(qualifier), judged.qualifier());
    assertEquals(Optional.of(verdict), judged.verdict(), judged.reasons().toString());
    if (verdict == Verdict.VOID) {
      assertTrue(judged.reasons().contains("Repeat on a stiffer supply."));
    }
  }

  /** A cranking that was asked for and could not be read is no pass. */
  @Test
  void aCrankingThatWasNotReadNeverPasses() {
    Limit cranking =
        new Limit(
            "crank", Quantity.CRANK_OUTPUT, Limit.Side.AT_LEAST, 46.5, 45, 0, 9, false, "test");
    assertEquals(
        Optional.of(Verdict.INCOMPLETE),
        judge(Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL, cranking), REST, hold(3, 47.5, 12))
            .verdict());
  }
}
