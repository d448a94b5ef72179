package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.reports.document.template.TemplateKind;
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
    Composed sheet =
        new Composed(page, TemplateKind.INSTALL_SHEET, dossier)
            .put(
                "warning",
                () ->
                    m.tag(
                        "div.warning",
                        m.drawing("charge", "charge", page.say("caution.sign")),
                        m.tag(
                            "p", new CautionPart(page).charge() + " " + page.say("caution.work"))));
    for (String group : GROUPS) {
      sheet.put(group, own -> List.of(group(group, own)));
    }
    return sheet.body();
  }

  /** Steps with a box to tick; a line that asks for a reading has room for it. */
  private Element group(String key, List<Element> own) {
    Element group = m.tag("div.part", m.tag("h2", page.say("install." + key)));
    for (String step : page.list("install." + key)) {
      group.appendChild(m.tag("p.step", m.tag("span.box", "\u00A0"), step));
    }
    for (Element step : own) {
      group.appendChild(m.tag("p.step", m.tag("span.box", "\u00A0"), step.getTextContent()));
    }
    return group;
  }
}
