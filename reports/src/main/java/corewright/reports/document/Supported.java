package corewright.reports.document;

import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import java.util.Optional;

/** What a record supports: a document that says more than it is refused, with the reason. */
final class Supported {
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
                        "The last run of unit " + tag + " is not a test before shipping",
                        "Run its ship profile"));
    if (last.judgement().verdict().filter(v -> v == Verdict.PASS).isEmpty()) {
      throw new Refusal(
          "The last test before shipping of unit "
              + tag
              + " came to "
              + last.judgement().verdict().map(Verdict::name).orElse("no verdict")
              + last.judgement().reasons().stream().findFirst().map(r -> ": " + r).orElse(""),
          "Only a PASS leaves with a warranty");
    }
    return last;
  }
}
