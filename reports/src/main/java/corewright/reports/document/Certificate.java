package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.document.template.TemplateKind;
import org.w3c.dom.Element;

/** The test certificate: a page for the customer, and behind it all there is for an expert. */
final class Certificate {
  private final Page page;

  Certificate(Page page) {
    this.page = page;
  }

  /** The body; its run is the one that is certified. */
  Element body(Dossier dossier) {
    RunRecord run = page.run().orElseThrow();
    ReadingTable table = new ReadingTable(page);
    Element body =
        new Composed(page, TemplateKind.CERTIFICATE, dossier)
            .put("verdict", () -> new VerdictPart(page).verdict(dossier))
            .put("picture", () -> new FigurePart(page).figure(run))
            .put(
                "readings",
                () ->
                    page.arrived()
                        .map(arrived -> table.both(run, arrived))
                        .orElseGet(() -> table.of(run)))
            .put(
                "outcome",
                () ->
                    dossier.rebuild().isEmpty()
                        ? new DecisionPart(page).columns(dossier)
                        : new RebuildPart(page).columns(dossier, run))
            .body();
    body.appendChild(new ExpertPart(page).pages(dossier, run));
    return body;
  }
}
