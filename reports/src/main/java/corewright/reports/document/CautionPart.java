package corewright.reports.document;

import corewright.bench.record.Verdict;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import java.util.List;
import org.w3c.dom.Element;

/** What was not tested, what can hurt, and what stands where a code would stand. */
final class CautionPart {
  private final Page page;
  private final Markup m;

  CautionPart(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  Element columns() {
    return m.tag(
        "div.cols",
        m.tag("div.l1", m.tag("h3", page.say("not-tested")), m.tag("p", notTested())),
        m.tag(
            "div.l2",
            m.drawing("charge", "charge", page.say("caution.sign")),
            m.tag("div.cautions", m.tag("p", charge()), m.tag("p", page.say("caution.work")))),
        m.tag("div.l3", standing()));
  }

  /** What was not tested, in sentences. */
  String notTested() {
    String temperature =
        page.profile()
            .map(
                p ->
                    page.say(
                        "not-tested.temperature",
                        page.number(p.temperature_C(), 0),
                        page.number(p.temperatureTolerance_K(), 0)))
            .orElse("");
    if (page.run().isEmpty()) {
      return page.say("not-tested.everything");
    }
    return page.say(
        page.run().get().measured().map(MeasuredRun::holds).orElse(List.of()).isEmpty()
            ? "not-tested.stopped"
            : "not-tested.list",
        temperature);
  }

  /** ½CV² of a healthy unit at its nominal output. */
  String charge() {
    return page.family()
        .map(Family::output_V)
        .map(
            v ->
                page.say(
                    "caution.charge",
                    page.number(v, 0),
                    page.number(0.5 * page.family().orElseThrow().capacitance_F() * v * v, 1)))
        .orElse(page.say("caution.charge.unknown"));
  }

  private void genuine(Element box, Issue issue) {
    String scanned = issue.number() + " " + issue.code();
    box.appendChild(m.tag("h3", page.say("certificate.check")));
    box.appendChild(
        m.tag(
            "div.code",
            m.drawing("qr", Symbols.QR.named(scanned), page.say("certificate.qr", scanned)),
            m.tag("p", m.tag("b", page.say("certificate.code", issue.code())))));
    box.appendChild(m.tag("p", page.say("certificate.how")));
  }

  private Element standing() {
    Element box = m.tag("div");
    if (page.specimen()) {
      box.appendChild(m.tag("p.specimen", page.say("specimen.word")));
      box.appendChild(
          m.tag("p", page.say(page.run().isPresent() ? "specimen" : "specimen.invented")));
    } else if (page.issue().isPresent()) {
      genuine(box, page.issue().get());
    } else {
      box.appendChild(m.tag("h3", page.say("standing")));
      box.appendChild(
          m.tag(
              "p",
              page.source()
                  .map(source -> page.say("standing." + source.name()))
                  .orElse(page.say("standing.none"))));
    }
    if (page.run()
        .flatMap(r -> r.judgement().verdict())
        .filter(v -> v == Verdict.VOID)
        .isPresent()) {
      box.appendChild(m.tag("p", page.say("void.means")));
    }
    return box;
  }
}
