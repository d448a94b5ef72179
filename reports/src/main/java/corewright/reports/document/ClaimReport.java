package corewright.reports.document;

import corewright.bench.life.ClaimClass;
import corewright.bench.record.RunRecord;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * The report of a claim: how the unit came, left and came back, on one picture with one limit; what
 * was found, what for and what against, and what follows.
 */
final class ClaimReport {
  private static final int MOST_LINES = 8;
  private final Page page;
  private final Markup m;

  ClaimReport(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  /** The body of the page; its run is the one it came back with, or left with. */
  Element body(ClaimCase claim) {
    RunRecord run = page.run().orElseThrow();
    Element body = m.tag("body");
    body.appendChild(new HeadPart(page).head("claim-report", claim.now()));
    body.appendChild(new HeadPart(page).unit(claim.now()));
    body.appendChild(said(claim));
    if (page.pictured()) {
      body.appendChild(new FigurePart(page).figure(claim.shipped(), caption(claim)));
    }
    body.appendChild(table(claim, run));
    body.appendChild(m.tag("div.cols", evidence(claim), follows(claim)));
    body.appendChild(new CautionPart(page).columns());
    body.appendChild(page.mark(Page.GAP));
    body.appendChild(new FootPart(page).foot());
    body.appendChild(page.mark(Page.END));
    return body;
  }

  private Element said(ClaimCase claim) {
    Optional<ClaimClass> known = claim.claimClass();
    String word = claim.outcome().map(o -> page.say("claim." + o)).orElse(page.say("claim.open"));
    Element words =
        m.tag(
            "div.wide",
            m.tag("h2", word),
            m.tag(
                "p.long",
                page.say("claim.customer", page.foreign(claim.symptom(), 160))
                    + " "
                    + claim
                        .returned()
                        .map(r -> page.whole(Sentence.of(page, r)))
                        .orElse(page.say("claim.untested"))),
            m.tag(
                "p.run",
                known
                    .map(
                        c ->
                            page.say(
                                "claim.class",
                                c.name(),
                                page.say("claim." + c.name()),
                                page.foreign(claim.row(), 8)))
                    .orElse(page.say("claim.unclassed"))));
    return m.tag("div.ver", words);
  }

  private String caption(ClaimCase claim) {
    if (claim.received().isPresent() && claim.returned().isPresent()) {
      return page.say("claim.caption.three");
    }
    return page.say(claim.returned().isPresent() ? "claim.caption.returned" : "caption.both");
  }

  /** Received, left, returned beside each other; the limits are those it left by. */
  private Element table(ClaimCase claim, RunRecord run) {
    ReadingTable table = new ReadingTable(page);
    return claim
        .returned()
        .map(
            returned ->
                table.three(claim.shipped(), claim.received().orElse(claim.shipped()), returned))
        .orElseGet(() -> table.of(run));
  }

  private Element evidence(ClaimCase claim) {
    Element column = m.tag("div.c1", m.tag("h3", page.say("claim.evidence")));
    List<String> lines = claim.evidence();
    int shown = Math.min((int) Math.ceil(MOST_LINES * page.room().text()), lines.size());
    lines
        .subList(0, shown)
        .forEach(line -> column.appendChild(m.tag("p", page.foreign(line, 110))));
    if (shown < lines.size()) {
      column.appendChild(m.tag("p", page.say("replaced.more", lines.size() - shown)));
    }
    if (lines.isEmpty()) {
      column.appendChild(m.tag("p", page.say("claim.no-evidence")));
    }
    column.appendChild(m.tag("p.reason", page.say("claim.seal-alone")));
    return column;
  }

  private Element follows(ClaimCase claim) {
    Element column = m.tag("div.c2", m.tag("h3", page.say("claim.follows")));
    String covered = claim.covered();
    column.appendChild(
        m.tag(
            "p",
            covered.isBlank()
                ? page.say("claim.uncovered")
                : page.say("claim.covered", page.foreign(covered, 40))));
    if (!claim.reason().isBlank()) {
      column.appendChild(m.tag("p", page.foreign(claim.reason(), 200)));
    }
    if (claim.outcome().filter(o -> o != ClaimClass.Outcome.ACCEPTED).isPresent()) {
      column.appendChild(m.tag("p", page.say("claim.check")));
      page.list("letter.before-refitting").forEach(line -> column.appendChild(m.tag("p", line)));
      column.appendChild(m.tag("p", page.say("claim.other-opinion")));
    }
    return column;
  }
}
