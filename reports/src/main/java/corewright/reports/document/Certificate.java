package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import org.w3c.dom.Element;

/** The test certificate: a page for the customer, and behind it all there is for an expert. */
final class Certificate {
  private final Page page;
  private final Markup m;

  Certificate(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  /** The body; its run is the one that is certified. */
  Element body(Dossier dossier) {
    RunRecord run = page.run().orElseThrow();
    ReadingTable table = new ReadingTable(page);
    Element body = m.tag("body");
    body.appendChild(new HeadPart(page).head("certificate", dossier));
    body.appendChild(new HeadPart(page).unit(dossier));
    body.appendChild(new VerdictPart(page).verdict(dossier));
    body.appendChild(new FigurePart(page).figure(run));
    body.appendChild(
        page.arrived().map(arrived -> table.both(run, arrived)).orElseGet(() -> table.of(run)));
    body.appendChild(
        dossier.rebuild().isEmpty()
            ? new DecisionPart(page).columns(dossier)
            : new RebuildPart(page).columns(dossier, run));
    body.appendChild(new CautionPart(page).columns());
    body.appendChild(page.mark(Page.GAP));
    body.appendChild(new FootPart(page).foot());
    body.appendChild(page.mark(Page.END));
    body.appendChild(new ExpertPart(page).pages(dossier, run));
    return body;
  }
}
