package corewright.reports.document;

import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Limit;
import corewright.reports.chart.Digits;
import corewright.reports.chart.Headlines;
import java.util.List;
import java.util.Optional;

/**
 * The one sentence, made of the numbers of the headline where they decided, else of the reasons.
 */
final class Sentence {
  private Sentence() {}

  static String of(Page page, RunRecord run) {
    return Headlines.worst(run)
        .filter(finding -> decided(finding, run))
        .flatMap(finding -> numbers(page, run, finding))
        .orElseGet(() -> reasons(page, run));
  }

  /** Whether the headline's own outcome is the run's verdict. */
  private static boolean decided(Finding finding, RunRecord run) {
    return run.judgement()
        .verdict()
        .map(Verdict::name)
        .filter(verdict -> verdict.equals(finding.outcome().name()))
        .isPresent();
  }

  private static Optional<String> numbers(Page page, RunRecord run, Finding finding) {
    boolean floor = finding.limit().side() == Limit.Side.AT_LEAST;
    if (finding.quantity() != Quantity.OUTPUT || !floor || finding.measurement().isEmpty()) {
      return Optional.empty();
    }
    Measurement output = finding.measurement().get();
    return run.measured().map(MeasuredRun::holds).orElse(List.of()).stream()
        .filter(hold -> hold.index() == finding.hold())
        .findFirst()
        .map(
            hold ->
                page.say(
                    "sentence." + finding.outcome(),
                    input(page, hold),
                    page.withU(output),
                    page.number(hold.windowEnd_s() - hold.windowStart_s(), 1),
                    load(page, hold),
                    Digits.of(finding.limit(), page.words().numerals())
                        .limit(finding.limit(), finding.measurement())));
  }

  private static String input(Page page, MeasuredHold hold) {
    return hold.feeds().stream()
        .map(FeedReadings::mean)
        .flatMap(reading -> reading.measurement().stream())
        .findFirst()
        .map(m -> page.number(m.value(), 1) + " V")
        .orElse("—");
  }

  private static String load(Page page, MeasuredHold hold) {
    return hold.value(Quantity.LOAD).map(m -> page.number(m.value(), 2) + " A").orElse("—");
  }

  private static String reasons(Page page, RunRecord run) {
    List<String> reasons = run.judgement().reasons();
    String first = String.join(" ", reasons.subList(0, Math.min(2, reasons.size())));
    return page.words().numerals().sentence(first);
  }
}
