package corewright.reports.document;

import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Finding;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.profiles.Variant;
import java.util.List;
import org.w3c.dom.Element;

/** Goes with a unit through its rebuild: what it did, which kit, each step with who and when. */
final class Traveller {
  private static final int POSITIONS = 8;
  private final Page page;
  private final Markup m;

  Traveller(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  /** The body of the page; the unit must be one that is rebuilt. */
  Element body(Dossier dossier) {
    String tag = dossier.core().tag();
    Element body = m.tag("body");
    body.appendChild(new HeadPart(page).head("traveller", dossier));
    body.appendChild(new HeadPart(page).unit(dossier));
    body.appendChild(
        m.tag(
            "div.scan",
            m.drawing("qr", Symbols.QR.named(tag), page.say("label.qr", tag)),
            m.tag("div.why", why(dossier).toArray()),
            m.drawing("bars", Symbols.BARS.named(tag), page.say("label.bars", tag))));
    body.appendChild(
        m.tag(
            "div.warning",
            m.drawing("charge", "charge", page.say("caution.sign")),
            m.tag("p", page.say("traveller.charge") + " " + page.say("caution.work"))));
    body.appendChild(steps());
    body.appendChild(positions());
    body.appendChild(page.mark(Page.GAP));
    body.appendChild(new FootPart(page).foot());
    body.appendChild(page.mark(Page.END));
    return body;
  }

  private List<Element> why(Dossier dossier) {
    Element kit = m.tag("p", page.say("traveller.kit", kit(dossier)));
    Element reason =
        m.tag(
            "p",
            dossier.decision().map(Decision::sentence).map(s -> page.kept(s, 200)).orElse("–"));
    String read = findings();
    return read.isEmpty()
        ? List.of(kit, reason)
        : List.of(kit, reason, m.tag("p.reason", read), m.tag("p.reason", page.say("u.means")));
  }

  private String kit(Dossier dossier) {
    return dossier
        .identification()
        .map(Identification::variant)
        .flatMap(id -> page.family().flatMap(f -> f.variant(id)))
        .map(Variant::kit)
        .filter(kit -> !kit.isBlank())
        .map(kit -> page.foreign(kit, 20))
        .orElse(page.say("nothing"));
  }

  /** The readings that it is rebuilt for. */
  private String findings() {
    List<Finding> failed =
        page.run().map(RunRecord::judgement).map(j -> j.findings()).orElse(List.of()).stream()
            .filter(f -> f.outcome() == Finding.Outcome.FAIL)
            .filter(f -> f.measurement().isPresent())
            .limit(4)
            .toList();
    return String.join(
        " · ",
        failed.stream()
            .map(
                f ->
                    page.quantity(f.quantity())
                        + page.run().map(run -> Row.load(page, run, f.hold())).orElse("")
                        + ": "
                        + page.withU(f.measurement().orElseThrow()))
            .toList());
  }

  private Element steps() {
    Element rows = m.tag("tbody");
    for (String step : page.list("traveller.steps")) {
      rows.appendChild(
          m.tag("tr", m.tag("td.step", step), m.tag("td.blank", ""), m.tag("td.blank", "")));
    }
    return m.tag(
        "table.work",
        m.tag(
            "thead",
            m.tag("tr", head("traveller.step"), head("traveller.who"), head("traveller.when"))),
        rows);
  }

  /** Each removed part is measured: this is what shows later which guesses were right. */
  private Element positions() {
    Element rows = m.tag("tbody");
    for (int i = 0; i < POSITIONS; i++) {
      rows.appendChild(
          m.tag("tr", m.tag("td.blank", ""), m.tag("td.blank", ""), m.tag("td.blank", "")));
    }
    return m.tag(
        "table.work",
        m.tag(
            "thead",
            m.tag(
                "tr",
                head("traveller.position"),
                head("traveller.lot"),
                head("traveller.removed"))),
        rows);
  }

  private Element head(String key) {
    return m.tag("th", page.say(key));
  }
}
