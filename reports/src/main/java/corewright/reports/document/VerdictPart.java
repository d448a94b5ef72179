package corewright.reports.document;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.reports.chart.Headlines;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;

/** Form, word and sentence: what a customer is told first. */
final class VerdictPart {
  private static final int LONGEST = 300;
  private final Page page;
  private final Markup m;

  VerdictPart(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  Element verdict(Dossier dossier) {
    Optional<Verdict> verdict = page.run().flatMap(run -> run.judgement().verdict());
    if (verdict.isPresent()) {
      return told(verdict.get().name(), page.word(verdict.get()), page.run().orElseThrow());
    }
    if (page.run().isPresent()) {
      return m.tag(
          "div.ver",
          m.tag("div.words", m.tag("h2", page.say("no-verdict")), sentence(page.run().get())));
    }
    return untested(dossier);
  }

  private Element told(String form, String word, RunRecord run) {
    return m.tag(
        "div.ver",
        m.drawing("form", form, page.say("form", word)),
        m.tag("div.words", m.tag("h2", word), sentence(run), m.tag("p.run", which(run))));
  }

  private Element sentence(RunRecord run) {
    String said = page.whole(Sentence.of(page, run) + arrived());
    return m.tag(said.length() > 170 ? "p.long" : "p.said", said);
  }

  private String arrived() {
    return page.arrived()
        .flatMap(Headlines::worst)
        .flatMap(Finding::measurement)
        .map(m -> " " + page.say("arrived-at", page.withU(m)))
        .orElse("");
  }

  private String which(RunRecord run) {
    return page.say(
        "run." + run.purpose(), run.number(), page.foreign(run.judgement().decisionRule(), 60));
  }

  /** Nothing was measured: the disposition leads, with its question. */
  private Element untested(Dossier dossier) {
    Disposition disposition =
        dossier.decision().map(Decision::disposition).orElse(Disposition.PENDING);
    List<String> reasons = dossier.decision().map(Decision::reasons).orElse(List.of());
    String said =
        dossier.decision().map(Decision::sentence).orElse(page.say("undecided"))
            + (reasons.isEmpty() ? "" : " " + reasons.get(0));
    return m.tag(
        "div.ver",
        m.drawing("form", disposition.name(), page.say("form", page.word(disposition))),
        m.tag(
            "div.words",
            m.tag("h2", page.word(disposition)),
            m.tag("p.said", page.kept(said, LONGEST)),
            m.tag("p.run", page.say("untested"))));
  }
}
