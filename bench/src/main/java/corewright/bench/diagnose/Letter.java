package corewright.bench.diagnose;

import corewright.bench.record.Diagnosis;
import corewright.bench.record.Finding;
import corewright.bench.record.Finding.Outcome;
import corewright.bench.record.Judgement;
import corewright.bench.record.Qualifier;
import corewright.bench.record.Verdict;
import corewright.measures.FeedReadings;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Limit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a customer can be told of a test, in plain words built from its readings: what was seen,
 * what it is consistent with, what is not known. It never says what a part is.
 */
public final class Letter {
  private Letter() {}

  /** Sentences about one run; of a test that is void nothing about the unit. */
  public static String finding(MeasuredRun run, Judgement judgement, Diagnosis diagnosis) {
    if (judgement.verdict().isEmpty()) {
      return first(judgement) + "So far nothing can be concluded.";
    }
    return switch (judgement.verdict().get()) {
      case PASS ->
          seen(run, judgement, Outcome.PASS).orElse("")
              + "Every limit of this test was met. That does not prove that the unit never fails.";
      case MARGINAL ->
          seen(run, judgement, Outcome.MARGINAL).orElse(first(judgement))
              + "That is not good enough to pass and not bad enough to fail. "
              + consistent(diagnosis);
      case FAIL ->
          seen(run, judgement, Outcome.FAIL).orElse(first(judgement)) + consistent(diagnosis);
      case UNSAFE ->
          first(judgement) + "For safety it was not tested any further. " + consistent(diagnosis);
      case VOID ->
          "The conditions of the test were not met. "
              + inputFell(judgement).orElse("That lay with the test and its bench. ")
              + "Nothing can be concluded about the unit; the test is repeated.";
      case INCOMPLETE ->
          "The test did not come to its end. "
              + first(judgement)
              + "Nothing can be concluded about the unit yet.";
    };
  }

  private static String consistent(Diagnosis diagnosis) {
    return diagnosis
        .named()
        .map(
            c ->
                "This is consistent with "
                    + c.words()
                    + ". The unit has not been opened, so the part is not confirmed.")
        .orElse("Which group of parts is behind it is not determined.");
  }

  /** The deciding reading in whole words, where it is the output; empty where it is another. */
  private static Optional<String> seen(MeasuredRun run, Judgement judgement, Outcome outcome) {
    return deciding(judgement, outcome)
        .flatMap(
            f ->
                run.holds().stream()
                    .filter(h -> h.index() == f.hold())
                    .findFirst()
                    .map(h -> told(run, h, f, f.measurement().orElseThrow())));
  }

  private static Optional<Finding> deciding(Judgement judgement, Outcome outcome) {
    return judgement.findings().stream()
        .filter(f -> f.outcome() == outcome && f.measurement().isPresent())
        .filter(f -> f.quantity() == Quantity.OUTPUT && f.limit().side() == Limit.Side.AT_LEAST)
        .filter(f -> stands(f, judgement))
        .min(
            Comparator.comparing((Finding f) -> !f.limit().headline())
                .thenComparingDouble(f -> f.margin().orElse(0.0)));
  }

  /** Only what the judgement itself put first is told first. */
  private static boolean stands(Finding finding, Judgement judgement) {
    String reading = finding.measurement().map(Figures::withU).orElse("");
    return judgement.verdict().filter(v -> v == Verdict.PASS).isPresent()
        || (!judgement.reasons().isEmpty() && judgement.reasons().get(0).contains(reading));
  }

  private static String told(MeasuredRun run, MeasuredHold hold, Finding f, Measurement output) {
    boolean passed = f.outcome() == Outcome.PASS;
    return lowestInput(hold)
            .map(in -> "With the input at " + Figures.withU(in) + " at its lowest, the")
            .orElse("The")
        + " output "
        + (passed ? "was" : "fell")
        + atRest(run, hold).filter(m -> !passed).map(m -> " from " + Figures.withU(m)).orElse("")
        + (passed ? " " : " to ")
        + Figures.withU(output)
        + hold.value(Quantity.LOAD)
            .map(a -> " under a load of " + Figures.number(a.value(), 2) + " A")
            .orElse("")
        + ". "
        + limit(f, output);
  }

  /** Of a marginal reading both ends of its band: the one alone does not say why. */
  private static String limit(Finding f, Measurement output) {
    String pass = Figures.like(f.limit().pass(), output);
    return f.outcome() == Outcome.MARGINAL && f.limit().pass() != f.limit().fail()
        ? "It passes from "
            + pass
            + " and fails below "
            + Figures.like(f.limit().fail(), output)
            + ". "
        : "The limit is " + pass + ". ";
  }

  /** The level before the load, where there was one that was held. */
  private static Optional<Measurement> atRest(MeasuredRun run, MeasuredHold hold) {
    List<MeasuredHold> before = run.holds().subList(0, Math.max(0, hold.index()));
    return before.stream()
        .filter(h -> h.value(Quantity.LOAD).filter(a -> a.value() < 0.02).isPresent())
        .findFirst()
        .flatMap(h -> h.value(Quantity.OUTPUT));
  }

  private static Optional<Measurement> lowestInput(MeasuredHold hold) {
    return hold.feeds().stream()
        .map(FeedReadings::lowestMedian)
        .flatMap(r -> r.measurement().stream())
        .min(Comparator.comparingDouble(Measurement::value));
  }

  /** The one condition that a customer can read; a fault of the bench is the shop's own affair. */
  private static Optional<String> inputFell(Judgement judgement) {
    return judgement.qualifier().filter(q -> q != Qualifier.VALID).map(fell -> first(judgement));
  }

  private static String first(Judgement judgement) {
    return judgement.reasons().isEmpty() ? "" : judgement.reasons().get(0) + " ";
  }
}
