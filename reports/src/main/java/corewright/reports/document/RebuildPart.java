package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import java.util.List;
import org.w3c.dom.Element;

/** Where it was judged, what went in, until when it is covered. */
final class RebuildPart {
  private static final int MOST_LINES = 8;
  private final Page page;
  private final Markup m;

  RebuildPart(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  Element columns(Dossier dossier, RunRecord left) {
    return m.tag("div.cols", judgedAt(dossier, left), replaced(dossier.rebuild()), covered());
  }

  private Element judgedAt(Dossier dossier, RunRecord left) {
    Element column = m.tag("div.r1", m.tag("h3", page.say("judged-at")));
    page.profile()
        .ifPresent(
            profile ->
                column.appendChild(
                    m.tag(
                        "p",
                        page.say(
                            "judged-at.run",
                            page.number(profile.temperature_C(), 0),
                            page.number(profile.temperatureTolerance_K(), 0),
                            left.number(),
                            left.judgement().verdict().map(page::word).orElse("–")))));
    new PastPart(page).into(column, dossier);
    return column;
  }

  private Element replaced(List<String> lines) {
    Element column = m.tag("div.r2", m.tag("h3", page.say("replaced")));
    int shown = Math.min((int) Math.ceil(MOST_LINES * page.room().text()), lines.size());
    for (String line : lines.subList(0, shown)) {
      column.appendChild(m.tag("p", page.foreign(line, 90)));
    }
    if (shown < lines.size()) {
      column.appendChild(m.tag("p", page.say("replaced.more", lines.size() - shown)));
    }
    column.appendChild(m.tag("p.reason", page.say("original")));
    return column;
  }

  private Element covered() {
    Element column = m.tag("div.r3", m.tag("h3", page.say("covered")));
    if (page.specimen()) {
      column.appendChild(m.tag("p", page.say("covered.specimen")));
    } else {
      String until = page.date(page.issued().plusMonths(page.shop().warranty_months()));
      column.appendChild(m.tag("p", m.tag("b", page.say("covered.until", until))));
      column.appendChild(m.tag("p", page.foreign(page.shop().warrantyTerms(), 200)));
    }
    return column;
  }
}
