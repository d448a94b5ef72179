package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.document.template.TemplateKind;
import org.w3c.dom.Element;

/**
 * The page that leaves with a rebuilt unit: how it came, how it leaves, what was done, what is
 * covered.
 */
final class WarrantyReport {
  private final Page page;

  WarrantyReport(Page page) {
    this.page = page;
  }

  /** The body of the page; its run is the last one before shipping. */
  Element body(Dossier dossier) {
    RunRecord left = page.run().orElseThrow();
    ReadingTable table = new ReadingTable(page);
    return new Composed(page, TemplateKind.WARRANTY_REPORT, dossier)
        .put("verdict", () -> new VerdictPart(page).verdict(dossier))
        .put("picture", () -> new FigurePart(page).figure(left))
        .put(
            "readings",
            () ->
                page.arrived()
                    .map(arrived -> table.both(left, arrived))
                    .orElseGet(() -> table.of(left)))
        .put("rebuild", () -> new RebuildPart(page).columns(dossier, left))
        .body();
  }
}
