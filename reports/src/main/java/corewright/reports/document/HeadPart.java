package corewright.reports.document;

import corewright.bench.record.Core;
import corewright.bench.record.Dossier;
import corewright.bench.record.Source;
import corewright.profiles.Family;
import java.util.Locale;
import org.w3c.dom.Element;

/** Whose paper, and which unit. */
final class HeadPart {
  private static final double WHOSE_MM = 84;
  private static final double LOGO_WIDE_MM = 28;
  private static final double LOGO_HIGH_MM = 10.5;
  private static final double LOGO_AIR_MM = 3.2;

  private final Page page;
  private final Markup m;

  HeadPart(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  /**
   * @param kind the document's key in the bundle, as {@code test-report}
   */
  Element head(String kind, Dossier dossier) {
    Shop shop = page.shop();
    OwnName.require(shop, dossier);
    String title = page.say(page.specimen() ? kind + ".specimen" : kind);
    String status =
        page.source()
            .map(source -> page.say(status(source), page.date(page.issued())))
            .orElse(
                page.say(
                    page.specimen() ? "status.invented" : "status.none", page.date(page.issued())));
    String address =
        shop.contact().isBlank() ? shop.address() : shop.address() + ", " + shop.contact();
    Element head =
        m.tag(
            "div.head",
            whose(shop, address),
            m.tag(
                "div.doc",
                m.tag(
                    "h1",
                    title
                        + " "
                        + page.whole(page.issue().map(Issue::number).orElse(dossier.core().tag()))),
                m.tag("p", status)));
    style(head, "border-bottom-color", shop.colour().toString());
    return head;
  }

  /** The logo stands before the name and takes its room from it. */
  private Element whose(Shop shop, String address) {
    Element name = m.tag("p.name", page.foreign(shop.name(), 60));
    style(name, "color", shop.colour().toString());
    Element words = m.tag("div.letterhead", name, m.tag("p", page.foreign(address, 90)));
    Element whose = m.tag("div.shop");
    double logo_mm = 0;
    if (shop.logo().isPresent()) {
      double aspect = shop.logo().get().aspect();
      logo_mm = Math.min(LOGO_WIDE_MM, LOGO_HIGH_MM * aspect);
      Element logo = m.drawing("logo", "logo", page.say("logo", page.foreign(shop.name(), 60)));
      logo.setAttribute(
          "style",
          String.format(Locale.ROOT, "width:%.1fmm;height:%.1fmm", logo_mm, logo_mm / aspect));
      whose.appendChild(logo);
      logo_mm += LOGO_AIR_MM;
    }
    style(words, "width", String.format(Locale.ROOT, "%.1fmm", WHOSE_MM - logo_mm));
    whose.appendChild(words);
    return whose;
  }

  private static void style(Element element, String property, String value) {
    element.setAttribute("style", property + ":" + value);
  }

  private String status(Source source) {
    return page.issue().isPresent() && source == Source.BENCH
        ? "status.certificate"
        : "status." + source.name();
  }

  Element unit(Dossier dossier) {
    Core core = dossier.core();
    return m.tag(
        "div.unit",
        cell("u1", "unit", m.tag("p.value", m.tag("span", new TagParts(page).of(core.tag())))),
        cell("u2", "what", m.tag("p.value", what(dossier))),
        cell(
            "u3",
            "label",
            m.tag("p.value", page.onUnit(or(core.label()), 34)),
            m.tag("p.under", page.say("serial", page.onUnit(or(core.serial()), 30)))),
        cell("u4", "for", m.tag("p.value", page.foreign(or(core.customer()), 60))));
  }

  private String what(Dossier dossier) {
    String build =
        dossier
            .identification()
            .map(id -> page.say("what." + id.band(), page.foreign(id.variant(), 12)))
            .orElse(page.say("what.unknown"));
    String volts =
        page.family()
            .map(
                (Family f) -> page.say("what.volts", plain(f.input_V()), plain(f.output_V())) + " ")
            .orElse("");
    return page.foreign(dossier.core().family(), 20) + ", " + volts + build;
  }

  private Element cell(String kind, String key, Element... values) {
    Element cell = m.tag("div." + kind, m.tag("p.key", page.say("unit." + key)));
    for (Element value : values) {
      cell.appendChild(value);
    }
    return cell;
  }

  private String or(String text) {
    return text.isBlank() ? page.say("nothing") : text;
  }

  private String plain(double volts) {
    return page.number(volts, volts == Math.rint(volts) ? 0 : 1);
  }
}
