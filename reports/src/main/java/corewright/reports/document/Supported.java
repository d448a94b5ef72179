package corewright.reports.document;

import corewright.bench.life.Never;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a record supports: a document that says more than it is refused, with the reason. */
final class Supported {
  /** How a bench file writes when a calibration ends. */
  private static final Pattern DUE = Pattern.compile("due ([0-9]{4}-[0-9]{2}-[0-9]{2})");

  private Supported() {}

  /** The run that a page about a unit speaks of. */
  static Optional<RunRecord> last(Dossier dossier) {
    return dossier.runs().stream().reduce((a, b) -> b);
  }

  /** The last run with which the unit arrived. */
  static Optional<RunRecord> arrived(Dossier dossier) {
    return dossier.runs().stream().filter(r -> r.purpose().equals("arrival")).reduce((a, b) -> b);
  }

  static Decision decided(Dossier dossier) {
    return dossier
        .decision()
        .orElseThrow(
            () ->
                new Refusal(
                    "Nothing has been decided about unit "
                        + dossier.core().tag()
                        + " on this visit",
                    "Test it, or decide about it, first"));
  }

  /** The run that proves that a rebuilt unit may leave. */
  static RunRecord leaving(Dossier dossier) {
    String tag = dossier.core().tag();
    if (dossier.rebuild().isEmpty()) {
      throw new Refusal(
          "Unit " + tag + " was not rebuilt on this visit", "Write down what was done to it first");
    }
    RunRecord last =
        last(dossier)
            .filter(run -> run.purpose().equals("ship"))
            .orElseThrow(
                () ->
                    new Refusal(
                        Never.LEAVE_UNTESTED.said(
                            "The last run of unit " + tag + " is not a test before shipping"),
                        Never.LEAVE_UNTESTED.remedy()));
    if (last.judgement().verdict().filter(v -> v == Verdict.PASS).isEmpty()) {
      throw new Refusal(
          "The last test before shipping of unit "
              + tag
              + " came to "
              + last.judgement().verdict().map(Verdict::name).orElse("no verdict")
              + last.judgement().reasons().stream().findFirst().map(r -> ": " + r).orElse(""),
          "Only a PASS leaves with a warranty");
    }
    return onABenchOfThisShop(last);
  }

  /** What somebody else measured, or a person typed, proves nothing of this shop's. */
  private static RunRecord onABenchOfThisShop(RunRecord run) {
    if (run.source() == Source.IMPORTED || run.source() == Source.BY_HAND) {
      throw new Refusal(
          "The last run of unit " + run.tag() + " was not measured on a bench of this shop",
          "A test report says what it came to; test the unit on a bench of this shop");
    }
    return run;
  }

  /**
   * The run that a certificate speaks of: the last one, completed and valid, on a bench whose
   * instruments were in date.
   *
   * @param zone where the shop stands: a calibration ends with a day there
   */
  static RunRecord certified(Dossier dossier, ZoneId zone) {
    String tag = dossier.core().tag();
    if (!dossier.rebuild().isEmpty()) {
      return inDate(leaving(dossier), zone);
    }
    RunRecord run =
        onABenchOfThisShop(
            last(dossier)
                .orElseThrow(
                    () -> new Refusal("Unit " + tag + " was not tested", "Test it first")));
    Optional<Verdict> verdict = run.judgement().verdict();
    if (verdict.isEmpty() || verdict.get() == Verdict.VOID || verdict.get() == Verdict.INCOMPLETE) {
      throw new Refusal(
          Never.PROVE_BY_VOID.said(
              "The last run of unit "
                  + tag
                  + " came to "
                  + verdict.map(Enum::name).orElse("no verdict")),
          Never.PROVE_BY_VOID.remedy());
    }
    return inDate(run, zone);
  }

  private static RunRecord inDate(RunRecord run, ZoneId zone) {
    LocalDate tested = LocalDate.ofInstant(run.started(), zone);
    for (EquipmentUsed used : run.equipment()) {
      Matcher due = DUE.matcher(used.calibration());
      if (due.find() && LocalDate.parse(due.group(1)).isBefore(tested)) {
        throw new Refusal(
            Never.CERTIFY_OVERDUE.said(
                "The calibration of the "
                    + used.role()
                    + " was overdue when the unit was tested: due "
                    + due.group(1)),
            Never.CERTIFY_OVERDUE.remedy());
      }
    }
    return run;
  }
}
