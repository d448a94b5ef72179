package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.reports.document.template.TemplateKind;
import org.w3c.dom.Element;

/** The one page about a unit: what it is, what it did, where it goes, and what nobody claims. */
final class TestReport {
  private final Page page;

  TestReport(Page page) {
    this.page = page;
  }

  /** The body of the page. */
  Element body(Dossier dossier) {
    return new Composed(page, TemplateKind.TEST_REPORT, dossier)
        .put("verdict", () -> new VerdictPart(page).verdict(dossier))
        .put("picture", own -> page.run().map(new FigurePart(page)::figure).stream().toList())
        .put(
            "readings",
            own ->
                page
                    .run()
                    .filter(run -> !run.judgement().findings().isEmpty())
                    .map(new ReadingTable(page)::of)
                    .stream()
                    .toList())
        .put("decision", () -> new DecisionPart(page).columns(dossier))
        .body();
  }
}
