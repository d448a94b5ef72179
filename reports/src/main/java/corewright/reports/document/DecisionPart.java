package corewright.reports.document;

import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.profiles.Variant;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;

/** Which build it is, and where it goes. */
final class DecisionPart {
  private static final int MOST_REASONS = 3;
  private static final int MOST_CONFLICTS = 2;
  private final Page page;
  private final Markup m;

  DecisionPart(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  Element columns(Dossier dossier) {
    return m.tag("div.cols", build(dossier), decision(dossier));
  }

  private Element build(Dossier dossier) {
    Element column = m.tag("div.c1", m.tag("h3", page.say("build")));
    dossier
        .identification()
        .ifPresentOrElse(
            id -> identified(column, id),
            () -> column.appendChild(m.tag("p", page.say("build.none"))));
    new PastPart(page).into(column, dossier);
    return column;
  }

  private void identified(Element column, Identification id) {
    column.appendChild(
        m.tag("p", m.tag("b", page.foreign(id.variant(), 12)), " " + page.foreign(title(id), 70)));
    column.appendChild(
        m.tag(
            "p",
            page.say(
                "build." + id.band(),
                probability(id.posterior()),
                page.foreign(id.runnerUp(), 12),
                probability(id.runnerUpPosterior()))));
    first(id.conflicts(), MOST_CONFLICTS)
        .forEach(conflict -> column.appendChild(m.tag("p", page.kept(conflict, 110))));
  }

  private String title(Identification id) {
    return page.family().flatMap(f -> f.variant(id.variant())).map(Variant::title).orElse("");
  }

  private Element decision(Dossier dossier) {
    Element column = m.tag("div.c2", m.tag("h3", page.say("decision")));
    dossier
        .decision()
        .ifPresentOrElse(
            decision -> decided(column, decision),
            () -> column.appendChild(m.tag("p", page.say("undecided"))));
    return column;
  }

  private void decided(Element column, Decision decision) {
    String word = page.word(decision.disposition());
    Element line =
        m.tag(
            "p.disp", m.drawing("tagform", decision.disposition().name(), page.say("form", word)));
    line.appendChild(m.tag("b", word));
    if (!decision.destination().isBlank()) {
      line.appendChild(
          m.tag("span.to", page.say("destination", page.foreign(decision.destination(), 20))));
    }
    column.appendChild(line);
    column.appendChild(m.tag("p", page.kept(decision.sentence(), 220)));
    if (decision.disposition() == Disposition.PENDING) {
      column.appendChild(m.tag("p.question", m.tag("b", page.foreign(decision.question(), 200))));
      column.appendChild(
          m.tag(
              "p",
              page.say(
                  "question.owner",
                  page.foreign(decision.owner(), 40),
                  decision.due().map(page::date).orElse("–"))));
    }
    Optional<Candidate> suspected = decision.diagnosis().flatMap(Diagnosis::named);
    suspected.ifPresent(
        c ->
            column.appendChild(
                m.tag(
                    "p.reason",
                    page.say(
                        "suspected", page.kept(c.words(), 90), probability(c.probability())))));
    first(Page.reasons(decision), suspected.isPresent() ? MOST_REASONS - 1 : MOST_REASONS)
        .forEach(reason -> column.appendChild(m.tag("p.reason", page.kept(reason, 150))));
    column.appendChild(
        m.tag(
            "p.row", page.say("row", page.foreign(decision.row(), 12), decision.tableRevision())));
  }

  /** Two decimals, and never 0 or 1: no cue makes anything certain. */
  private String probability(double p) {
    if (p > 0.99) {
      return page.say("probability.over");
    }
    return p < 0.01 ? page.say("probability.under") : page.number(p, 2);
  }

  private static List<String> first(List<String> all, int most) {
    return all.subList(0, Math.min(most, all.size()));
  }
}
