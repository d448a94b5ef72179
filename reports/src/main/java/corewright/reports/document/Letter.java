package corewright.reports.document;

import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.reports.document.template.TemplateKind;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * The letter about a decision or an open question: what came, what it did, what becomes of it. It
 * says what was measured and never which part is broken.
 */
final class Letter {
  private static final int MOST_REASONS = 3;

  /** Whose a question is that only the unit's owner can answer; as the decision table has it. */
  private static final String CUSTOMER = "customer";

  private final Page page;
  private final Markup m;

  Letter(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  /** The body of the page; the unit must have a decision. */
  Element body(Dossier dossier) {
    Decision decision = dossier.decision().orElseThrow();
    return new Composed(page, TemplateKind.LETTER, dossier)
        .put("received", own -> List.of(came(dossier.core(), own)))
        .put("finding", this::did)
        .put("decision", () -> becomes(dossier, decision))
        .put(
            "sign",
            own -> own.isEmpty() ? List.of(sign()) : List.of(m.tag("div.sign", own.toArray())))
        .body();
  }

  private Element sign() {
    return m.tag("p.sign", page.say("letter.sign", page.foreign(page.shop().name(), 60)));
  }

  private Element came(Core core, List<Element> own) {
    Element part = part("letter.came");
    own.forEach(part::appendChild);
    if (own.isEmpty()) {
      say(part, "letter.received", page.whole(core.tag()), page.day(core.received()));
    }
    if (!core.complaint().isBlank()) {
      say(part, "letter.complaint", page.foreign(core.complaint(), 240));
    }
    page.run()
        .ifPresent(
            run -> {
              String key = "letter.tested." + run.purpose();
              say(part, page.words().has(key) ? key : "letter.tested", page.day(run.started()));
            });
    return part;
  }

  private Element did() {
    Element part = part("letter.did");
    Optional<RunRecord> run = page.run();
    if (run.isEmpty()) {
      say(part, "letter.untested");
      return part;
    }
    String said = page.whole(Sentence.of(page, run.get()));
    part.appendChild(m.tag("p", said));
    if (said.contains("±")) {
      part.appendChild(m.tag("p.reason", page.say("u.means")));
    }
    if (came(Verdict.VOID)) {
      say(part, "void.means");
    } else if (came(Verdict.FAIL) || came(Verdict.MARGINAL)) {
      say(part, "letter.not-opened");
    } else if (came(Verdict.PASS)) {
      say(part, "letter.not-proved");
    }
    return part;
  }

  private boolean came(Verdict verdict) {
    return page.run().flatMap(r -> r.judgement().verdict()).filter(v -> v == verdict).isPresent();
  }

  private Element becomes(Dossier dossier, Decision decision) {
    Element part = part("decision");
    String word = page.word(decision.disposition());
    part.appendChild(
        m.tag(
            "p.disp",
            m.drawing("tagform", decision.disposition().name(), page.say("form", word)),
            m.tag("b", word)));
    part.appendChild(m.tag("p", page.kept(decision.sentence(), 300)));
    Page.reasons(decision).stream()
        .limit(MOST_REASONS)
        .forEach(reason -> part.appendChild(m.tag("p.reason", page.kept(reason, 200))));
    if (decision.disposition() == Disposition.PENDING) {
      open(part, decision);
    } else {
      follows(part, dossier.core().mode(), decision);
    }
    return part;
  }

  /** A question that the reader is to answer is put to them; of any other we write again. */
  private void open(Element part, Decision decision) {
    boolean theirs = decision.owner().equals(CUSTOMER);
    String due = decision.due().map(page::date).orElse("–");
    say(part, theirs ? "letter.asked" : "letter.question");
    part.appendChild(m.tag("p", m.tag("b", page.foreign(decision.question(), 240))));
    if (theirs) {
      say(part, "letter.answer", due);
    } else if (decision.owner().chars().anyMatch(Character::isUpperCase)) {
      say(part, "letter.again", page.foreign(decision.owner(), 40), due);
    } else {
      say(part, "letter.again.us", due); // a place in the shop is nobody whom a customer knows
    }
  }

  /** What the decision means for whoever owns the unit. */
  private void follows(Element part, String mode, Decision decision) {
    String general = "letter." + decision.disposition();
    String own = general + "." + mode;
    say(part, page.words().has(own) ? own : general);
    if (decision.disposition() == Disposition.RETURN && came(Verdict.PASS)) {
      Element list = m.tag("ol");
      page.list("letter.before-refitting").forEach(line -> list.appendChild(m.tag("li", line)));
      part.appendChild(list);
      say(part, "letter.again-free");
    }
  }

  private Element part(String title) {
    return m.tag("div.part", m.tag("h2", page.say(title)));
  }

  private void say(Element part, String key, Object... values) {
    part.appendChild(m.tag("p", page.say(key, values)));
  }
}
