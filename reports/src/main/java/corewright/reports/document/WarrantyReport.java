package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import org.w3c.dom.Element;

/**
 * The page that leaves with a rebuilt unit: how it came, how it leaves, what was done, what is
 * covered.
 */
final class WarrantyReport {
  private final Page page;
  private final Markup m;

  WarrantyReport(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  /** The body of the page; its run is the last one before shipping. */
  Element body(Dossier dossier) {
    RunRecord left = page.run().orElseThrow();
    ReadingTable table = new ReadingTable(page);
    Element body = m.tag("body");
    body.appendChild(new HeadPart(page).head("warranty-report", dossier));
    body.appendChild(new HeadPart(page).unit(dossier));
    body.appendChild(new VerdictPart(page).verdict(dossier));
    body.appendChild(new FigurePart(page).figure(left));
    body.appendChild(
        page.arrived().map(arrived -> table.both(left, arrived)).orElseGet(() -> table.of(left)));
    body.appendChild(new RebuildPart(page).columns(dossier, left));
    body.appendChild(new CautionPart(page).columns());
    body.appendChild(page.mark(Page.GAP));
    body.appendChild(new FootPart(page).foot());
    body.appendChild(page.mark(Page.END));
    return body;
  }
}
