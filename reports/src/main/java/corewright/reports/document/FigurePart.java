package corewright.reports.document;

import corewright.bench.record.RunRecord;
import org.w3c.dom.Element;

/** The picture with its caption, or the reason why there is none. */
final class FigurePart {
  /** Marks the picture, whose height is what the rest of the page leaves. */
  static final String ID = "picture";

  private final Page page;
  private final Markup m;

  FigurePart(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  Element figure(RunRecord run) {
    return figure(run, page.say(page.arrived().isPresent() ? "caption.both" : "caption"));
  }

  /**
   * @param words below the picture, what its lines are
   */
  Element figure(RunRecord run, String words) {
    if (!page.pictured()) {
      return m.tag(
          "div.fig", m.tag("p.none", page.say("picture.none", page.kept(run.end().saw(), 200))));
    }
    Element picture = m.drawing("pic", "picture", description(run));
    picture.setAttribute("id", ID);
    return m.tag("div.fig", picture, m.tag("p.caption", words));
  }

  private String description(RunRecord run) {
    return page.say("picture.alt", page.foreign(Sentence.of(page, run), 300))
        + (page.specimen() ? " " + page.say("picture.emulated") : "");
  }
}
