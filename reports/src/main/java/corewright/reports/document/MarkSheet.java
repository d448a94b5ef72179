package corewright.reports.document;

import corewright.bench.record.Dossier;
import org.w3c.dom.Element;

/** Where the hidden mark of a unit is and how it looked: kept in the shop, shown to nobody else. */
final class MarkSheet {
  private final Page page;
  private final Markup m;

  MarkSheet(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  /** The body of the page. */
  Element body(Dossier dossier) {
    String tag = dossier.core().tag();
    Element body = m.tag("body");
    body.appendChild(new HeadPart(page).head("mark-sheet", dossier));
    body.appendChild(new HeadPart(page).unit(dossier));
    body.appendChild(
        m.tag(
            "div.scan",
            m.drawing("qr", Symbols.QR.named(tag), page.say("label.qr", tag)),
            m.tag("div.why", m.tag("p", m.tag("b", page.say("mark.confidential"))))));
    for (String line : page.list("mark.fields")) {
      body.appendChild(m.tag("p.field", line));
    }
    body.appendChild(m.tag("h2.title", page.say("mark.photo")));
    body.appendChild(m.tag("div.frame", "\u00A0"));
    page.list("mark.notes").forEach(note -> body.appendChild(m.tag("p", note)));
    body.appendChild(page.mark(Page.GAP));
    body.appendChild(new FootPart(page).foot());
    body.appendChild(page.mark(Page.END));
    return body;
  }
}
