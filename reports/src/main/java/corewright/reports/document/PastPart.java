package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.Hypothesis;
import corewright.bench.record.Identification;
import corewright.bench.record.Past;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * What happened to a unit before: whether anybody rebuilt it, how often it was opened here, and
 * whether its label is the one that it came with. No page leaves it out.
 */
final class PastPart {
  private static final int MOST = 160;
  private final Page page;

  PastPart(Page page) {
    this.page = page;
  }

  /** A paragraph each. */
  void into(Element column, Dossier dossier) {
    lines(dossier).forEach(line -> column.appendChild(page.markup().tag("p.past", line)));
  }

  private List<String> lines(Dossier dossier) {
    List<String> lines = new ArrayList<>();
    int opened = dossier.past().opened();
    lines.add(
        page.say(opened == 0 ? "past.unopened" : "past.opened", opened)
            + " "
            + signs(dossier)
                .map(signs -> page.say("past.signs", page.kept(signs, MOST)))
                .orElse(page.say(looked(dossier) ? "past.no-signs" : "past.not-looked")));
    for (Past.Relabelled change : dossier.past().relabelled()) {
      lines.add(
          page.say(
              "past.relabelled",
              page.day(change.at()),
              page.onUnit(change.was(), 60),
              page.onUnit(change.now(), 60),
              page.foreign(change.reason(), MOST)));
    }
    return lines;
  }

  private static boolean looked(Dossier dossier) {
    return dossier
        .identification()
        .map(Identification::history)
        .filter(h -> !h.isEmpty())
        .isPresent();
  }

  /** What was seen of it, whatever else it may come from. */
  private static Optional<String> signs(Dossier dossier) {
    return dossier.identification().stream()
        .flatMap(id -> id.history().stream())
        .filter(h -> h.id().equals(Hypothesis.REBUILT_BEFORE))
        .filter(h -> !h.because().isEmpty())
        .map(h -> String.join("; ", h.because()))
        .findFirst();
  }
}
