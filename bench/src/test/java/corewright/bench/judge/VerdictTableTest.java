package corewright.bench.judge;

import static corewright.bench.judge.Invented.OUTPUT_FULL;
import static corewright.bench.judge.Invented.RIPPLE;
import static corewright.bench.judge.Invented.hold;
import static corewright.bench.judge.Invented.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.judge.Invented.Hold;
import corewright.bench.record.Finding;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunEnd.Kind;
import corewright.bench.record.RunEnd.Trip;
import corewright.bench.record.Verdict;
import corewright.bench.triage.Cases;
import corewright.bench.triage.Proof;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.Family;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Profile.Purpose;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictTableTest {
  private static final Profile PROFILE = Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL);
  private static final RunEnd DONE = RunEnd.completed(8);

  /** What a row is tried on. */
  private record Witness(RunEnd end, Profile profile, MeasuredRun run, List<String> reference) {
    Witness(RunEnd end, Profile profile, MeasuredRun run) {
      this(end, profile, run, List.of());
    }

    Witness(RunEnd end, Hold... holds) {
      this(end, PROFILE, Invented.run(holds));
    }
  }

  private static final Map<String, Witness> WITNESSES = new LinkedHashMap<>();

  static {
    WITNESSES.put(
        "V09",
        new Witness(
            end(Kind.REFUSED_TO_POWER),
            PROFILE,
            Invented.run(),
            List.of("It is refused as well.")));
    WITNESSES.put("V10", new Witness(end(Kind.REFUSED_TO_POWER)));
    WITNESSES.put("V11", new Witness(trip(Trip.OUTPUT_OVER), rest(), hold(3, 47.5, 8)));
    WITNESSES.put("V12", new Witness(trip(Trip.SUPPLY_CURRENT_OVER), rest(), hold(3, 47.5, 8)));
    WITNESSES.put("V13", new Witness(DONE, rest(), hold(3, 56.5, 12)));
    WITNESSES.put("V20", new Witness(end(Kind.BENCH_FAULT), rest(), hold(3, 43, 12)));
    WITNESSES.put("V30", new Witness(end(Kind.STOPPED), rest(), hold(3, 43, 12)));
    WITNESSES.put("V31", new Witness(end(Kind.ABANDONED), rest(), hold(3, 43, 12)));
    WITNESSES.put("V32", new Witness(DONE));
    WITNESSES.put("V35", new Witness(DONE, rest(), hold(3, -5, 12)));
    WITNESSES.put("V40", new Witness(DONE, rest(), hold(3, 47.5, 8.9)));
    WITNESSES.put("V41", new Witness(DONE, rest(), hold(3, 0.1, 12)));
    WITNESSES.put("V42", new Witness(DONE, rest(), hold(3, 43, 9.9)));
    WITNESSES.put("V45", cranked(44, 3.9, 47.9));
    WITNESSES.put("V50", new Witness(DONE, rest(), hold(3, 43, 12)));
    WITNESSES.put("V60", new Witness(DONE, rest(), hold(0.5, 47.9, 12)));
    WITNESSES.put(
        "V70",
        new Witness(DONE, Invented.profile(Purpose.SHIP, RIPPLE), run(rest(), hold(3, 47.5, 12))));
    WITNESSES.put("V80", new Witness(DONE, rest(), hold(3, 46, 12)));
    WITNESSES.put("V90", new Witness(DONE, rest(), hold(3, 47.5, 12)));
    WITNESSES.put(
        "V99",
        new Witness(DONE, Invented.profile(Purpose.ARRIVAL), run(rest(), hold(3, 47.5, 12))));
  }

  @Test
  void everyRowDecidesItsOwnCaseAndNoRowIsWithoutOne() {
    assertEquals(
        VerdictTable.ROWS.stream().map(VerdictTable.Row::id).toList(),
        List.copyOf(WITNESSES.keySet()));
    WITNESSES.forEach(
        (id, w) -> {
          Saw saw = Judge.see(w.run(), Invented.family(), w.profile(), w.end(), w.reference());
          assertEquals(id, Judge.row(saw).id());
        });
  }

  /** Worst and spread of five crankings, and what was held under load. */
  private static Witness cranked(double worst_V, double spread_V, double held_V) {
    Limit worst = crank("crank", Quantity.CRANK_OUTPUT, Limit.Side.AT_LEAST, 46.5, 45);
    Limit spread = crank("spread", Quantity.CRANK_SPREAD, Limit.Side.AT_MOST, 0.25, 0.25);
    return new Witness(
        DONE,
        Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL, worst, spread),
        new MeasuredRun(
            10_000,
            80_000,
            "invented",
            run(rest(), hold(3, held_V, 12)).holds(),
            Map.of(
                Quantity.CRANK_OUTPUT,
                Reading.of(worst_V, 0.01, Unit.VOLT),
                Quantity.CRANK_SPREAD,
                Reading.of(spread_V, 0.01, Unit.VOLT)),
            List.of()));
  }

  private static Limit crank(
      String id, Quantity quantity, Limit.Side side, double pass, double fail) {
    return new Limit(id, quantity, side, pass, fail, 0, 1e9, false, "invented");
  }

  /**
   * Five that agree are a pass or a fail; some of each are neither, and never hide another fail.
   */
  @ParameterizedTest
  @CsvSource({
    "47.8, 0.1, 47.9, PASS",
    "44, 3.9, 47.9, MARGINAL",
    "47, 0.9, 47.9, MARGINAL",
    "44, 0.2, 47.9, FAIL",
    "42, 2.0, 47.9, FAIL",
    "44, 3.9, 44.0, FAIL"
  })
  void crankingsThatSpeakAgainstOneAnotherAreIntermittent(
      double worst_V, double spread_V, double held_V, Verdict verdict) {
    Witness w = cranked(worst_V, spread_V, held_V);
    Judgement judged = Judge.judge(w.run(), Invented.family(), w.profile(), w.end());
    assertEquals(Optional.of(verdict), judged.verdict(), judged.reasons().toString());
    assertEquals(
        verdict == Verdict.MARGINAL, judged.reasons().contains(Repeats.REMEDY), "cold, hot, tap");
  }

  @Test
  void voidIsNeverPassOrFail() {
    for (Map.Entry<String, Witness> entry : WITNESSES.entrySet()) {
      Witness w = entry.getValue();
      Judgement judged = Judge.judge(w.run(), Invented.family(), w.profile(), w.end());
      boolean voided = judged.qualifier().filter(q -> q.name().equals("VOID")).isPresent();
      if (voided) {
        assertTrue(
            judged.verdict().filter(v -> v == Verdict.PASS || v == Verdict.FAIL).isEmpty(),
            entry.getKey());
      }
      assertTrue(!judged.reasons().isEmpty(), entry.getKey() + " gives no reason");
    }
  }

  /** A relay that lets go takes the input away: that asks for a sound bench, and for no supply. */
  @Test
  void anInputThatFellWithTheBenchIsTheBenchs() {
    MeasuredRun fell = run(rest(), hold(3, 43, 8));
    Judgement bench = Judge.judge(fell, Invented.family(), PROFILE, end(Kind.BENCH_FAULT));
    assertEquals(Optional.empty(), bench.qualifier());
    assertEquals(
        Proof.Evidence.VOID_BENCH,
        Cases.proof(Optional.of(bench), false, Proof.Coverage.COMPLETE).evidence());
    Judgement supply = Judge.judge(fell, Invented.family(), PROFILE, DONE);
    assertEquals(
        Proof.Evidence.VOID_INPUT,
        Cases.proof(Optional.of(supply), false, Proof.Coverage.COMPLETE).evidence());
  }

  @Test
  void aNeededReadingThatIsMissingNeverPasses() {
    Profile both = Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL, RIPPLE);
    Hold lost =
        hold(3, 47.5, 12)
            .with(
                Quantity.RIPPLE_PEAK_TO_PEAK, Reading.none("120 samples were lost in the window."));
    Judgement judged = judge(both, rest(), lost);
    assertEquals(Optional.of(Verdict.INCOMPLETE), judged.verdict());
    assertEquals(
        "Ripple, peak to peak at 3.00 A: 120 samples were lost in the window.",
        judged.reasons().get(0));
  }

  @Test
  void aLimitThatNoHoldMetIsSaid() {
    Judgement judged = judge(PROFILE, rest(), hold(2, 47.5, 12));
    assertEquals(Optional.of(Verdict.INCOMPLETE), judged.verdict());
    assertEquals(-1, judged.findings().get(0).hold());
    assertEquals("Output: no hold drew between 2.50 and 3.50 A.", judged.reasons().get(0));
  }

  /** The load was told 3 A and drew 1 A from 40 V: under the limit's own load, and yet a fail. */
  @Test
  void aUnitThatCannotCarryTheLoadAskedForFails() {
    Judgement judged = judge(PROFILE, rest(), hold(1, 40, 12));
    assertEquals(Optional.of(Verdict.FAIL), judged.verdict());
    // the same current with the output in order is the load's failure, not the unit's
    assertEquals(
        Optional.of(Verdict.INCOMPLETE), judge(PROFILE, rest(), hold(2, 47.8, 12)).verdict());
  }

  /** A load that is off reads a little below zero as often as above. */
  @Test
  void noiseAboutALoadThatIsOffDoesNotHideTheHold() {
    Limit atRest =
        new Limit("rest", Quantity.OUTPUT, Limit.Side.AT_LEAST, 46.5, 45, 0, 0.1, false, "test");
    Profile profile = Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL, atRest);
    assertEquals(
        Optional.of(Verdict.PASS),
        judge(profile, hold(-0.0007, 48, 12.5), hold(3, 47.5, 12)).verdict());
  }

  @Test
  void aPassNamesForEachLimitWhatCameClosest() {
    Profile wide =
        Invented.profile(
            Purpose.ARRIVAL,
            new Limit("any", Quantity.OUTPUT, Limit.Side.AT_LEAST, 46.5, 45, 0, 9, true, "test"));
    assertEquals(
        List.of(
            "Output held 47.50 ± 0.02 V at 3.00 A; the limit is 46.50 V, 1.00 V away.",
            "The input stayed at or above 12.00 ± 0.02 V at 3.00 A: a valid test."),
        judge(wide, rest(), hold(3, 47.5, 12)).reasons());
  }

  @Test
  void notRecoveringIsAFailWhereItWasWatchedForLongEnough() {
    Limit recovery =
        new Limit(
            "recovery",
            Quantity.RECOVERY,
            Limit.Side.AT_MOST,
            0.002,
            0.002,
            2.5,
            3.5,
            false,
            "test");
    Profile profile = Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL, recovery);
    Judgement judged = judge(profile, rest(), hold(3, 47.5, 12).recovery("not_recovered"));
    assertEquals(Optional.of(Verdict.FAIL), judged.verdict());
    assertEquals(
        "Recovery at 3.00 A: it had not come back after 3.980 s.", judged.reasons().get(0));
    // no edge, no recovery: the hold is not asked, and the limit is not met by it
    assertEquals(
        Optional.of(Verdict.INCOMPLETE),
        judge(profile, rest(), hold(3, 47.5, 12).recovery("no_edge")).verdict());
  }

  @Test
  void quantitiesOfTheWholeRunAreHeldOnce() {
    Limit resistance =
        new Limit(
            "rout", Quantity.OUTPUT_RESISTANCE, Limit.Side.AT_MOST, 0.1, 0.1, 0, 9, false, "test");
    MeasuredRun bare = run(rest(), hold(3, 47.5, 12));
    MeasuredRun run =
        new MeasuredRun(
            bare.sampleRate_Hz(),
            bare.samples(),
            bare.uBasis(),
            bare.holds(),
            Map.of(Quantity.OUTPUT_RESISTANCE, Reading.of(0.16, 0.01, Unit.OHM)),
            List.of());
    Judgement judged =
        Judge.judge(run, Invented.family(), Invented.profile(Purpose.ARRIVAL, resistance), DONE);
    assertEquals(1, judged.findings().size());
    assertEquals(
        "Output resistance was 0.16 ± 0.02 Ω; the limit is 0.10 Ω.", judged.reasons().get(0));
  }

  @Test
  void theWorstFailComesFirstAndTheHeadlineBeforeIt() {
    Profile both = Invented.profile(Purpose.ARRIVAL, RIPPLE, OUTPUT_FULL);
    Hold bad = hold(3, 44, 12).with(Quantity.RIPPLE_PEAK_TO_PEAK, Reading.of(2, 0.1, Unit.VOLT));
    assertEquals(
        List.of(
            "Output fell to 44.00 ± 0.02 V at 3.00 A; the limit is 46.50 V.",
            "Ripple, peak to peak was 2.0 ± 0.2 V at 3.00 A; the limit is 0.4 V.",
            "The input stayed at or above 12.00 ± 0.02 V at 3.00 A: a valid test."),
        judge(both, rest(), bad).reasons());
  }

  @Test
  void anEmptyMeasurementIsNeverAPass() {
    for (Finding finding : judge(PROFILE, rest(), hold(2, 47.5, 12)).findings()) {
      assertTrue(finding.measurement().isPresent() || finding.outcome() != Finding.Outcome.PASS);
    }
  }

  @Test
  void anotherFamilysProfileIsRefused() {
    String message =
        assertThrows(
                IllegalArgumentException.class, () -> Judge.judge(run(), another(), PROFILE, DONE))
            .getMessage();
    assertTrue(message.contains("other") && message.contains("inv48"), message);
  }

  private static Family another() {
    Family f = Invented.family();
    return new Family(
        "other",
        f.revision(),
        f.title(),
        f.input_V(),
        f.inputCeiling_V(),
        f.output_V(),
        f.ratedLoad_A(),
        f.capacitance_F(),
        f.esr_ohm(),
        f.switching_Hz(),
        f.zones(),
        f.abort(),
        f.discharge(),
        f.dead(),
        f.defaultProfile(),
        f.testOnly(),
        f.variants(),
        f.cues(),
        f.checklist(),
        f.economics(),
        f.origin());
  }

  private static Judgement judge(Profile profile, Hold... holds) {
    return Judge.judge(run(holds), Invented.family(), profile, DONE);
  }

  private static Hold rest() {
    return hold(0, 48, 12.5);
  }

  private static RunEnd end(Kind kind) {
    return new RunEnd(kind, "full", 5, "Something was seen.", "Do something.");
  }

  private static RunEnd trip(Trip trip) {
    return RunEnd.tripped(trip, "full", 5, "Something was seen.", "Do something.");
  }
}
