package corewright.bench.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.bench.record.Finding;
import corewright.bench.record.Judgement;
import corewright.bench.record.Qualifier;
import corewright.bench.record.Verdict;
import corewright.bench.triage.Build;
import corewright.bench.triage.Case;
import corewright.bench.triage.Custody;
import corewright.bench.triage.Facts;
import corewright.bench.triage.Means;
import corewright.bench.triage.Proof;
import corewright.bench.triage.Terms;
import corewright.bench.triage.Triage;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * No sentence claims more than a bench can know. What may not be said to a customer from outside is
 * common practice: a part is never named as the cause, blame and guarantees are not given.
 */
class LetterTest {
  private static final Pattern CLAIMS =
      Pattern.compile(
          "\\b(is|was) (bad|broken|dead|defective|faulty|the"
              + " cause)\\b|defective|abused|\\bproves\\b|no problem|tested good|lifetime|caused"
              + " by|certainly|guarantee|as new");

  private static final Measurement REST = new Measurement(48.012, 0.01, Unit.VOLT);
  private static final Measurement LOADED = new Measurement(43.285, 0.01, Unit.VOLT);
  private static final Measurement INPUT = new Measurement(10.204, 0.004, Unit.VOLT);
  private static final Limit LIMIT =
      new Limit(
          "output-full", Quantity.OUTPUT, Limit.Side.AT_LEAST, 46.5, 45, 1.9, 1e6, true, "test");

  @Test
  void theReadingIsToldAsItWasReadAndTheGroupAsPossible() {
    assertEquals(
        "With the input at 10.204 ± 0.008 V at its lowest, the output fell from 48.01 ± 0.02 V to"
            + " 43.29 ± 0.02 V under a load of 2.00 A. The limit is 46.50 V. This is consistent"
            + " with a drifted feedback divider or reference. The unit has not been opened, so the"
            + " part is not confirmed.",
        Letter.finding(run(), judged(Verdict.FAIL), named(Group.FEEDBACK)));
  }

  /** Between its limits a reading is neither; one limit alone would not say so. */
  @Test
  void aMarginalReadingIsToldWithBothEndsOfItsBand() {
    String told = Letter.finding(run(), judged(Verdict.MARGINAL), named(Group.FEEDBACK));
    String band =
        "It passes from 46.50 V and fails below 45.00 V. That is not good enough to pass and not"
            + " bad enough to fail. ";
    assertTrue(told.contains(band), told);
  }

  @Test
  void noSentenceClaimsMoreThanTheBenchKnows() {
    for (Verdict verdict : Verdict.values()) {
      for (Group group : Group.values()) {
        for (Diagnosis diagnosis : List.of(named(group), open(group))) {
          String finding = Letter.finding(run(), judged(verdict), diagnosis);
          for (Terms.Mode mode : Terms.Mode.values()) {
            for (Terms.Approval approval : Terms.Approval.values()) {
              check(verdict, group, diagnosis, finding, decided(verdict, mode, approval, finding));
            }
          }
        }
      }
    }
  }

  private static void check(
      Verdict verdict, Group group, Diagnosis diagnosis, String finding, Decision decision) {
    String all = finding + " " + decision.sentence() + " " + decision.question();
    assertFalse(CLAIMS.matcher(all.toLowerCase(Locale.ROOT)).find(), all);
    assertTrue(finding.endsWith("."), finding);
    boolean says = finding.contains(group.words());
    boolean may =
        diagnosis.determined()
            && (verdict == Verdict.FAIL
                || verdict == Verdict.UNSAFE
                || verdict == Verdict.MARGINAL);
    assertEquals(may, says, verdict + " " + finding);
    if (says) {
      assertTrue(finding.contains("consistent with " + group.words()), finding);
      assertTrue(finding.contains("not been opened"), finding);
    }
  }

  @Test
  void aVoidTestSaysNothingAboutTheUnit() {
    String said = Letter.finding(run(), judged(Verdict.VOID), named(Group.JOINT));
    assertTrue(said.contains("Nothing can be concluded about the unit"), said);
    assertFalse(said.contains("43.29") || said.contains("output"), said);
  }

  /** Ports and instruments are of no use to a customer. */
  @Test
  void ofAFaultOfTheBenchNoMoreIsToldThanThatItWasOne() {
    Judgement fault =
        new Judgement(
            Optional.of(Verdict.VOID),
            Optional.empty(),
            "",
            List.of(),
            List.of("meter: reading from /dev/pts/5: no answer within 300 ms."));
    assertEquals(
        "The conditions of the test were not met. That lay with the test and its bench. Nothing can"
            + " be concluded about the unit; the test is repeated.",
        Letter.finding(run(), fault, named(Group.JOINT)));
    assertTrue(
        Letter.finding(run(), judged(Verdict.VOID), named(Group.JOINT)).contains("8.7 ± 0.1 V"));
  }

  @Test
  void withoutAVerdictNothingIsConcluded() {
    Judgement none =
        new Judgement(Optional.empty(), Optional.empty(), "", List.of(), List.of("At rest."));
    assertEquals(
        "At rest. So far nothing can be concluded.",
        Letter.finding(run(), none, named(Group.JOINT)));
  }

  private static Decision decided(
      Verdict verdict, Terms.Mode mode, Terms.Approval approval, String finding) {
    Proof.Evidence evidence =
        switch (verdict) {
          case PASS -> Proof.Evidence.PASS;
          case MARGINAL -> Proof.Evidence.MARGINAL;
          case FAIL -> Proof.Evidence.FAIL;
          case UNSAFE -> Proof.Evidence.UNSAFE;
          case VOID -> Proof.Evidence.VOID_INPUT;
          case INCOMPLETE -> Proof.Evidence.INCOMPLETE;
        };
    Case unit =
        new Case(
            Custody.CLEAR,
            new Build(Build.Identity.IDENTIFIED, Build.Candidates.AGREE, Build.Rebuildable.YES),
            new Proof(evidence, Proof.Coverage.COMPLETE),
            Terms.plain(mode).with(approval),
            Means.PLAIN);
    Facts facts =
        new Facts(
            "",
            judged(verdict).reasons(),
            List.of(),
            "",
            "its converter is set in hard resin",
            finding,
            Optional.empty(),
            List.of());
    return Triage.decide(unit, facts, LocalDate.of(2026, 11, 25));
  }

  private static Diagnosis named(Group group) {
    return new Diagnosis(List.of(candidate(group, 0.8)), true, List.of("The input held."));
  }

  private static Diagnosis open(Group group) {
    return new Diagnosis(List.of(candidate(group, 0.4)), false, List.of("The input held."));
  }

  private static Candidate candidate(Group group, double probability) {
    return new Candidate(
        group.name(), group.words(), probability, List.of("seen"), List.of(), group.check());
  }

  private static Judgement judged(Verdict verdict) {
    Finding.Outcome outcome =
        switch (verdict) {
          case PASS -> Finding.Outcome.PASS;
          case MARGINAL -> Finding.Outcome.MARGINAL;
          default -> Finding.Outcome.FAIL;
        };
    String reason =
        verdict == Verdict.VOID
            ? "The input fell to 8.7 ± 0.1 V at 2.00 A, below 9.0 V: too low for a valid test."
            : "Output fell to 43.29 ± 0.02 V at 2.00 A; the limit is 46.50 V.";
    return new Judgement(
        Optional.of(verdict),
        Optional.of(verdict == Verdict.VOID ? Qualifier.VOID : Qualifier.VALID),
        "simple acceptance",
        List.of(
            new Finding(
                LIMIT, 1, Optional.of(LOADED), outcome, Optional.of(-3.2), Optional.of(0.0), "")),
        List.of(reason));
  }

  private static MeasuredRun run() {
    return new MeasuredRun(
        1000, 1000, "test", List.of(hold(0, 0, REST), hold(1, 2, LOADED)), Map.of(), List.of());
  }

  private static MeasuredHold hold(int index, double load_A, Measurement output) {
    return new MeasuredHold(
        index,
        index,
        index + 1.0,
        index,
        index + 1.0,
        Map.of(
            Quantity.OUTPUT,
            new Reading.Measured(output, List.of()),
            Quantity.LOAD,
            Reading.of(load_A, 0.001, Unit.AMPERE)),
        List.of(
            new FeedReadings(
                "input",
                Reading.of(12.5, 0.01, Unit.VOLT),
                Reading.none("not read"),
                new Reading.Measured(INPUT, List.of()))),
        "recovered");
  }
}
