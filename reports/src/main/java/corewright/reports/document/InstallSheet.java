package corewright.reports.document;

import corewright.bench.record.Dossier;
import java.util.List;
import org.w3c.dom.Element;

/** What whoever fits the unit does, in order: most units that come back were killed on the way. */
final class InstallSheet {
  private static final List<String> GROUPS = List.of("before", "move", "fit", "measure", "ready");
  private final Page page;
  private final Markup m;

  InstallSheet(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  /** The body of the page. */
  Element body(Dossier dossier) {
    Element body = m.tag("body");
    body.appendChild(new HeadPart(page).head("install-sheet", dossier));
    body.appendChild(new HeadPart(page).unit(dossier));
    body.appendChild(
        m.tag(
            "div.warning",
            m.drawing("charge", "charge", page.say("caution.sign")),
            m.tag("p", new CautionPart(page).charge() + " " + page.say("caution.work"))));
    for (String group : GROUPS) {
      body.appendChild(group(group));
    }
    body.appendChild(page.mark(Page.GAP));
    body.appendChild(new FootPart(page).foot());
    body.appendChild(page.mark(Page.END));
    return body;
  }

  /** Steps with a box to tick; a line that asks for a reading has room for it. */
  private Element group(String key) {
    Element group = m.tag("div.part", m.tag("h2", page.say("install." + key)));
    for (String step : page.list("install." + key)) {
      group.appendChild(m.tag("p.step", m.tag("span.box", "\u00A0"), step));
    }
    return group;
  }
}
