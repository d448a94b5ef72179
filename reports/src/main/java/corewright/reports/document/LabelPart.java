package corewright.reports.document;

import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import org.w3c.dom.Element;

/**
 * What is tied to a core and what is stuck on a unit that leaves. Neither says anything about a
 * customer.
 */
final class LabelPart {
  private final Page page;
  private final Markup m;
  private final Label label;

  LabelPart(Page page, Label label) {
    this.page = page;
    this.m = page.markup();
    this.label = label;
  }

  /** The tag of a core: from when it is received, only this number is used. */
  Element core(Dossier dossier) {
    Core core = dossier.core();
    Element body = m.tag("body.l" + label.size(), qr(core.tag()), name(core.tag()));
    body.appendChild(
        m.tag(
            "p.line",
            m.tag("b", page.foreign(core.family(), 12)),
            " " + page.foreign(mode(core.mode()), 20)));
    body.appendChild(
        m.tag(
            "p.line more",
            page.say(
                "label.received",
                page.day(core.received()),
                page.foreign(initials(core.receivedBy()), 6))));
    bars(body, core.tag());
    body.appendChild(charged("label.charged.core"));
    body.appendChild(discharged());
    body.appendChild(route(dossier));
    specimen(body);
    return body;
  }

  /**
   * The label of a rebuilt unit.
   *
   * @param left the run that proves that it may leave
   */
  Element unit(Dossier dossier, RunRecord left) {
    OwnName.require(page.shop(), dossier);
    String tag = dossier.core().tag();
    String build =
        dossier.identification().map(Identification::variant).map(v -> " " + v).orElse("");
    Element body = m.tag("body.l" + label.size() + " leaves", qr(tag), name(tag));
    body.appendChild(m.tag("p.rebuilt", page.say("label.rebuilt", page.day(left.ended()))));
    body.appendChild(
        m.tag(
            "p.line",
            m.tag("b", page.foreign(dossier.core().family() + build, 20)),
            m.tag("span.test", page.say("label.test", page.foreign(Certifying.number(left), 24)))));
    body.appendChild(charged("label.charged"));
    body.appendChild(m.tag("p.line closed", page.say("label.closed")));
    bars(body, tag);
    body.appendChild(
        m.tag(
            "p.line more",
            page.foreign(page.shop().name(), 32) + ", " + page.foreign(contact(), 56)));
    body.appendChild(m.tag("p.line more", page.say("label.not-new")));
    specimen(body);
    return body;
  }

  private Element qr(String tag) {
    return m.drawing("qr", Symbols.QR.named(tag), page.say("label.qr", tag));
  }

  private void bars(Element body, String tag) {
    if (label != Label.SMALL) {
      body.appendChild(m.drawing("bars", Symbols.BARS.named(tag), page.say("label.bars", tag)));
    }
  }

  private Element name(String tag) {
    Element name = m.tag("h1");
    for (Object part : new TagParts(page).of(tag)) {
      name.appendChild(
          part instanceof Element e ? e : m.document().createTextNode(part.toString()));
    }
    return name;
  }

  private String mode(String mode) {
    return page.words().has("mode." + mode) ? page.say("mode." + mode) : mode;
  }

  /** Where it goes, in the outline that a gloved hand can sort a shelf by. */
  private Element route(Dossier dossier) {
    Element route = m.tag("div.route");
    dossier
        .decision()
        .ifPresentOrElse(
            decision -> decided(route, decision),
            () -> route.appendChild(m.tag("p.line", page.say("undecided"))));
    return route;
  }

  private void decided(Element route, Decision decision) {
    String word = page.word(decision.disposition());
    route.appendChild(m.drawing("tagform", decision.disposition().name(), page.say("form", word)));
    route.appendChild(m.tag("b", word));
    if (!decision.question().isBlank()) {
      route.appendChild(m.tag("p.line", page.foreign(decision.question(), 120)));
    }
  }

  /** Filled in by hand, at the unit, by whoever measured it. */
  private Element discharged() {
    return m.tag(
        "div.discharged",
        m.drawing("charge", "charge", page.say("caution.sign")),
        m.tag("p.line", page.say("label.discharged")));
  }

  /** What may burn or startle whoever opens it, on every size. */
  private Element charged(String key) {
    return m.tag(
        "p.line charged", m.drawing("charge", "charge", page.say("caution.sign")), page.say(key));
  }

  private void specimen(Element body) {
    if (page.specimen()) {
      body.appendChild(m.tag("p.specimen", page.say("specimen.word")));
    }
  }

  private String contact() {
    return page.shop().contact().isBlank() ? page.shop().address() : page.shop().contact();
  }

  private static String initials(String name) {
    return name.replaceAll("(\\p{L})\\p{L}*[.]?\\s*", "$1");
  }
}
