package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.files.Origin;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.ReferenceUnit;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A bench that reads a known good unit 1 % lower than when it was proved fails good units: common
 * practice, no source, locks it at 0.15 V in 48 V, 0.3 %.
 */
class ReferenceUnitsTest {
  private static final Family FAMILY = Catalogue.ofHome().family("sd48");
  private static final Profile PROFILE = Catalogue.ofHome().profile("sd48-arrival");
  private static final BenchDescription BENCH = Descriptions.shippedBench("emulated-sd48");
  private static final RunRecord PROVED = run("a", BENCH.id(), Verdict.PASS, 47.9);

  @Test
  void aBenchThatReadsItsReferenceUnitLowerIsInDoubtUntilItReadsItRightAgain() {
    RunRecord low = run("b", BENCH.id(), Verdict.FAIL, 47.4);
    List<String> doubts = doubts(PROVED, low);
    assertTrue(doubts.get(0).contains("the bench is in doubt"), doubts.toString());
    assertEquals(Optional.of(Verdict.VOID), judged(doubts).verdict());
    assertEquals(Optional.of(Verdict.FAIL), judged(List.of()).verdict());

    assertEquals(List.of(), doubts(PROVED, low, run("c", BENCH.id(), Verdict.PASS, 47.95)));
  }

  @Test
  void anotherBenchARunThatSomebodyStoppedAndAUnitThatWasNeverProvedSayNothing() {
    assertEquals(List.of(), doubts(PROVED, run("b", "another", Verdict.FAIL, 40)));
    assertEquals(List.of(), doubts(PROVED, run("b", BENCH.id(), Verdict.INCOMPLETE, 40)));
    assertEquals(List.of(), doubts(run("b", BENCH.id(), Verdict.FAIL, 40)));
  }

  /** As with the shift's check: a cable that was pulled in its run is no word against the bench. */
  @Test
  void aRunThatTheBenchItselfEndedSaysNothingAndOneThatWasNotLetPastThePowerUpDoes() {
    RunEnd pulled =
        new RunEnd(RunEnd.Kind.BENCH_FAULT, RunEnd.Trip.NONE, "rest", 1, "No answer.", "Plug in.");
    assertEquals(List.of(), doubts(PROVED, run("b", Verdict.VOID, pulled, Optional.empty())));
    RunRecord refused = run("b", Verdict.UNSAFE, RunEnd.completed(0), Optional.empty());
    assertEquals(
        List.of("The reference unit does not run through the profile on this bench."),
        doubts(PROVED, refused));
    assertTrue(ShiftCheck.saysSomething(refused, ReferenceUnit.Kind.GOOD));
    assertFalse(ShiftCheck.saysSomething(refused, ReferenceUnit.Kind.BAD));
  }

  private static List<String> doubts(RunRecord... runs) {
    return ReferenceUnits.doubts(List.of(runs), BENCH, FAMILY, PROFILE);
  }

  /** A unit that is far too low, on a bench of which this is known. */
  private static Judgement judged(List<String> reference) {
    return Assessing.judge(
        Optional.of(measured(44)), FAMILY, PROFILE, RunEnd.completed(1), reference);
  }

  private static RunRecord run(String id, String bench, Verdict verdict, double output_V) {
    return run(id, bench, verdict, RunEnd.completed(1), Optional.of(measured(output_V)));
  }

  private static RunRecord run(
      String id, Verdict verdict, RunEnd end, Optional<MeasuredRun> measured) {
    return run(id, BENCH.id(), verdict, end, measured);
  }

  private static RunRecord run(
      String id, String bench, Verdict verdict, RunEnd end, Optional<MeasuredRun> measured) {
    Origin nowhere = new Origin("test", "", "");
    return new RunRecord(
        id,
        "U-1",
        "arrival",
        1,
        Source.BENCH,
        Instant.EPOCH,
        Instant.EPOCH,
        "Ada",
        bench,
        "",
        PROFILE.id(),
        PROFILE.revision(),
        nowhere,
        nowhere,
        Optional.empty(),
        List.of(),
        "",
        "",
        "",
        end,
        List.of(),
        measured,
        new Judgement(Optional.of(verdict), Optional.empty(), "", List.of(), List.of()));
  }

  private static MeasuredRun measured(double output_V) {
    List<MeasuredHold> holds = Stream.of(hold(0, 0, 48), hold(1, 2, output_V)).toList();
    return new MeasuredRun(1000, 2000, "test", holds, Map.of(), List.of());
  }

  private static MeasuredHold hold(int index, double load_A, double output_V) {
    Reading input = Reading.of(12.5, 0.01, Unit.VOLT);
    return new MeasuredHold(
        index,
        index,
        index + 1.0,
        index,
        index + 1.0,
        Map.of(
            Quantity.OUTPUT, Reading.of(output_V, 0.01, Unit.VOLT),
            Quantity.INPUT, input,
            Quantity.LOAD, Reading.of(load_A, 0.001, Unit.AMPERE)),
        List.of(new FeedReadings("input", input, input, input)),
        "recovered");
  }
}
