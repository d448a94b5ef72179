package corewright.reports.document;

import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.reports.document.template.Placeholders;
import corewright.reports.document.template.Template;
import corewright.reports.document.template.TemplateKind;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.w3c.dom.Element;

/** Fills a page in the order of its template. */
final class Composed {
  private static final int LONGEST = 600;
  private static final int VALUE = 120;

  private final Page page;
  private final Dossier dossier;
  private final Template template;
  private final Map<String, Function<List<Element>, List<Element>>> parts = new LinkedHashMap<>();

  Composed(Page page, TemplateKind kind, Dossier dossier) {
    this.page = page;
    this.dossier = dossier;
    this.template = page.templates().of(kind);
    put("head", () -> new HeadPart(page).head(kind.id(), dossier));
    put("unit", () -> new HeadPart(page).unit(dossier));
    put("cautions", () -> new CautionPart(page).columns());
    put("foot", () -> new FootPart(page).foot());
  }

  /** Makes one element of a part. */
  interface Made {
    Element element();
  }

  /** A section of one element, which the shop's own words follow. */
  Composed put(String section, Made made) {
    return put(
        section,
        own -> {
          Element element = made.element();
          own.forEach(element::appendChild);
          return List.of(element);
        });
  }

  /**
   * Any section.
   *
   * @param part makes it with what the shop says in it, often nothing
   */
  Composed put(String section, Function<List<Element>, List<Element>> part) {
    parts.put(section, part);
    return this;
  }

  /** Puts all of it into a body, with the gap that is stretched above the foot. */
  Element body() {
    Element body = page.markup().tag("body");
    for (Template.Section section : template.sections()) {
      if (!applies(section)) {
        continue;
      }
      List<Element> own = section.paragraphs().stream().map(this::own).toList();
      if (section.name().equals(TemplateKind.TEXT)) {
        Element text = page.markup().tag("div.part own");
        own.forEach(text::appendChild);
        body.appendChild(text);
        continue;
      }
      if (section.name().equals("foot")) {
        body.appendChild(page.mark(Page.GAP));
      }
      Optional.ofNullable(parts.get(section.name()))
          .map(part -> part.apply(own))
          .orElse(List.of())
          .forEach(body::appendChild);
    }
    body.appendChild(page.mark(Page.END));
    return body;
  }

  private Element own(String paragraph) {
    return page.markup().tag("p", page.foreign(Placeholders.filled(paragraph, values()), LONGEST));
  }

  private boolean applies(Template.Section section) {
    String when = section.when();
    return when.isEmpty()
        || dossier.decision().filter(d -> d.disposition().name().equals(when)).isPresent()
        || page.run()
            .flatMap(run -> run.judgement().verdict())
            .filter(verdict -> verdict.name().equals(when))
            .isPresent();
  }

  private Map<String, String> values() {
    Core core = dossier.core();
    Map<String, String> values = new HashMap<>();
    values.put("unit", core.tag());
    values.put("family", core.family());
    values.put("customer", core.customer());
    values.put("received", page.day(core.received()));
    values.put("today", page.date(page.issued()));
    values.put("shop", page.shop().name());
    values.put("address", page.shop().address());
    values.put("contact", page.shop().contact());
    values.put("question", dossier.decision().map(Decision::question).orElse(""));
    values.put("owner", dossier.decision().map(Decision::owner).orElse(""));
    values.put("due", dossier.decision().flatMap(Decision::due).map(page::date).orElse("–"));
    values.replaceAll((name, value) -> page.foreign(value, VALUE));
    values.put("label", page.onUnit(core.label(), VALUE));
    values.put("serial", page.onUnit(core.serial(), VALUE));
    return values;
  }
}
