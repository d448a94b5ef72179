package corewright.reports.document;

import corewright.bench.record.Dossier;
import org.w3c.dom.Element;

/** The one page about a unit: what it is, what it did, where it goes, and what nobody claims. */
final class TestReport {
  private final Page page;

  TestReport(Page page) {
    this.page = page;
  }

  /** The body of the page. */
  Element body(Dossier dossier) {
    Markup m = page.markup();
    Element body = m.tag("body");
    body.appendChild(new HeadPart(page).head("test-report", dossier));
    body.appendChild(new HeadPart(page).unit(dossier));
    body.appendChild(new VerdictPart(page).verdict(dossier));
    page.run().ifPresent(run -> body.appendChild(new FigurePart(page).figure(run)));
    page.run()
        .filter(run -> !run.judgement().findings().isEmpty())
        .ifPresent(run -> body.appendChild(new ReadingTable(page).of(run)));
    body.appendChild(new DecisionPart(page).columns(dossier));
    body.appendChild(new CautionPart(page).columns());
    body.appendChild(page.mark(Page.GAP));
    body.appendChild(new FootPart(page).foot());
    body.appendChild(page.mark(Page.END));
    return body;
  }
}
