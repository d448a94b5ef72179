package corewright.bench.judge;

import static corewright.bench.judge.Invented.OUTPUT_FULL;
import static corewright.bench.judge.Invented.hold;
import static corewright.bench.judge.Invented.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.judge.Invented.Hold;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Judgement;
import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.bench.triage.Build;
import corewright.bench.triage.Build.Candidates;
import corewright.bench.triage.Build.Identity;
import corewright.bench.triage.Build.Rebuildable;
import corewright.bench.triage.Case;
import corewright.bench.triage.Cases;
import corewright.bench.triage.Custody;
import corewright.bench.triage.Means;
import corewright.bench.triage.Proof.Coverage;
import corewright.bench.triage.Terms;
import corewright.bench.triage.Triage;
import corewright.profiles.Profile.Purpose;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Facts of the trade. Common practice, no source. */
class RulesOfTheTradeTest {
  private static final Hold AT_REST = hold(0, 48, 12.5);
  private static final LocalDate TODAY = LocalDate.of(2024, 3, 4);

  @Test
  void fortyEightVoltsAtRestAndFortyThreeUnderLoadFails() {
    Judgement judged = judge(AT_REST, hold(3, 43.28, 12.2));
    assertEquals(Optional.of(Verdict.FAIL), judged.verdict());
    assertEquals(
        "Output fell to 43.28 ± 0.02 V at 3.00 A; the limit is 46.50 V.", judged.reasons().get(0));
  }

  @Test
  void aReadingAtRestGivesNoVerdict() {
    Judgement judged = judge(AT_REST);
    assertEquals(Optional.empty(), judged.verdict());
    assertTrue(judged.reasons().get(0).startsWith("A reading at rest proves nothing"));
    Decision decision = decide(judged);
    assertEquals(Disposition.PENDING, decision.disposition());
    assertEquals("What does it do under load? Test it.", decision.question());
  }

  @Test
  void theSameFallWithTheInputBelowNineVoltsSaysNothing() {
    Judgement judged = judge(AT_REST, hold(3, 43.28, 8.7));
    assertEquals(Optional.of(Verdict.VOID), judged.verdict());
    assertEquals(Optional.of(Qualifier.VOID), judged.qualifier());
    assertTrue(judged.reasons().get(0).startsWith("The input fell to 8.70 ± 0.02 V at 3.00 A"));
    assertEquals(Disposition.PENDING, decide(judged).disposition());
  }

  @Test
  void betweenNineAndTenVoltsAPassCounts() {
    Judgement judged = judge(AT_REST, hold(3, 47.5, 9.5));
    assertEquals(Optional.of(Verdict.PASS), judged.verdict());
    assertEquals(Optional.of(Qualifier.TOLERATED), judged.qualifier());
  }

  @Test
  void betweenNineAndTenVoltsAFailIsVoidAndAsksForAStifferSupply() {
    Judgement judged = judge(AT_REST, hold(3, 43.28, 9.5));
    assertEquals(Optional.of(Verdict.VOID), judged.verdict());
    assertTrue(judged.reasons().contains("Repeat on a stiffer supply."));
    Decision decision = decide(judged);
    assertEquals(Disposition.PENDING, decision.disposition());
    assertEquals("D30", decision.row());
    assertTrue(decision.question().contains("stiffer supply"), decision.question());
    assertEquals(Optional.of(TODAY.plusDays(2)), decision.due());
  }

  @Test
  void betweenNineAndTenVoltsAMarginalReadingDoesNotCountEither() {
    assertEquals(Optional.of(Verdict.VOID), judge(AT_REST, hold(3, 46, 9.5)).verdict());
    assertEquals(Optional.of(Verdict.MARGINAL), judge(AT_REST, hold(3, 46, 12.5)).verdict());
  }

  /** A dead unit takes no load: that is no reading at rest, for at rest a good one shows 48 V. */
  @Test
  void aDeadUnitFailsThoughNothingWasLoaded() {
    Judgement judged = judge(hold(0, 0.01, 12));
    assertEquals(Optional.of(Verdict.FAIL), judged.verdict());
    assertTrue(judged.reasons().get(0).contains("0.01 ± 0.02 V"), judged.reasons().get(0));
    // without a disconnect, a converter that does not switch passes its input on
    assertEquals(Optional.of(Verdict.FAIL), judge(hold(0, 11.4, 12)).verdict());
    assertEquals(Optional.of(Verdict.VOID), judge(hold(0, 0.01, 0.02)).verdict());
  }

  @Test
  void outputBelowItsAbortLimitWithAValidInputFails() {
    RunEnd end = RunEnd.tripped(RunEnd.Trip.OUTPUT_UNDER, "full", 5, "Output was 27 V.", "");
    assertEquals(Optional.of(Verdict.FAIL), judge(end, AT_REST, hold(3, 27, 12.2)).verdict());
    assertEquals(Optional.of(Verdict.VOID), judge(end, AT_REST, hold(3, 27, 8)).verdict());
    assertEquals(Optional.of(Verdict.VOID), judge(end, AT_REST, hold(3, 27, 9.5)).verdict());
    assertEquals(Optional.of(Verdict.FAIL), judge(AT_REST, hold(3, 27, 12.2)).verdict());
  }

  private static Judgement judge(Hold... holds) {
    return judge(RunEnd.completed(4.0 * holds.length), holds);
  }

  private static Judgement judge(RunEnd end, Hold... holds) {
    return Judge.judge(
        run(holds), Invented.family(), Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL), end);
  }

  private static Decision decide(Judgement judgement) {
    Case unit =
        new Case(
            Custody.CLEAR,
            new Build(Identity.IDENTIFIED, Candidates.AGREE, Rebuildable.YES),
            Cases.proof(Optional.of(judgement), false, Coverage.COMPLETE),
            Terms.plain(Terms.Mode.REPAIR),
            Means.PLAIN);
    return Triage.decide(
        unit,
        Cases.facts(Invented.family(), Optional.empty(), Optional.of(judgement), Optional.empty()),
        TODAY);
  }
}
