package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Limit;
import corewright.reports.chart.Digits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * Behind the first page: every comparison, every reading, what it was made with, how often it was
 * tried, and what was not tested.
 *
 * @see "ISO/IEC 17025:2017, 7.8.2, 7.8.3 and 7.8.6, whose order it follows"
 */
final class ExpertPart {
  private final Page page;
  private final Markup m;

  ExpertPart(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  Element pages(Dossier dossier, RunRecord run) {
    Element pages = m.tag("div.expert");
    pages.appendChild(m.tag("h2.title", page.say("expert.compared", rule(run))));
    pages.appendChild(compared(run));
    pages.appendChild(m.tag("h2.title", page.say("expert.read")));
    pages.appendChild(m.tag("p.note", page.say("expert.basis", basis(run))));
    pages.appendChild(read(run));
    pages.appendChild(m.tag("h2.title", page.say("expert.made-with")));
    pages.appendChild(madeWith(run));
    pages.appendChild(closing(dossier, run));
    return pages;
  }

  /** Stays together, so that no last page holds a line or two. */
  private Element closing(Dossier dossier, RunRecord run) {
    Element closing = m.tag("div.closing", m.tag("h2.title", page.say("expert.how")));
    how(dossier, run).forEach(line -> closing.appendChild(m.tag("p.note", line)));
    closing.appendChild(m.tag("h2.title", page.say("not-tested")));
    closing.appendChild(m.tag("p.note", new CautionPart(page).notTested()));
    closing.appendChild(
        m.tag("p.last", page.say("expert.end", page.issue().map(Issue::number).orElse(""))));
    return closing;
  }

  private String rule(RunRecord run) {
    return page.foreign(run.judgement().decisionRule(), 60);
  }

  private String basis(RunRecord run) {
    return run.measured().map(MeasuredRun::uBasis).map(b -> page.kept(b, 200)).orElse("–");
  }

  private Element compared(RunRecord run) {
    Element rows = m.tag("tbody");
    for (Finding finding : run.judgement().findings()) {
      Digits digits = Digits.of(finding.limit(), page.words().numerals());
      String side =
          finding.limit().side() == Limit.Side.AT_LEAST ? "limit.at-least" : "limit.at-most";
      rows.appendChild(
          row(
              page.quantity(finding.quantity()),
              finding.hold() < 0 ? "–" : String.valueOf(finding.hold() + 1),
              finding
                  .measurement()
                  .map(v -> digits.value(v) + " " + digits.u(v))
                  .orElse(page.kept(finding.note(), 60)),
              page.say(side, digits.limit(finding.limit(), finding.measurement())),
              finding
                  .measurement()
                  .flatMap(v -> finding.margin().map(margin -> digits.marginWithUnit(margin, v)))
                  .orElse("–"),
              finding.conformity().map(this::probability).orElse("–"),
              page.say("outcome." + finding.outcome())));
    }
    return table("compared", rows);
  }

  private String probability(double p) {
    if (p > 0.999) {
      return page.say("expert.over");
    }
    return p < 0.001 ? page.say("expert.under") : page.number(p, 3);
  }

  private Element read(RunRecord run) {
    Element rows = m.tag("tbody");
    List<MeasuredHold> holds = run.measured().map(MeasuredRun::holds).orElse(List.of());
    for (MeasuredHold hold : holds) {
      String where =
          page.say(
              "expert.hold",
              hold.index() + 1,
              page.number(hold.windowStart_s(), 3),
              page.number(hold.windowEnd_s(), 3));
      List<Element> feeds =
          hold.feeds().stream()
              .flatMap(feed -> figure(feed.lowestMedian()).stream())
              .map(lowest -> cell(page.say("expert.lowest"), lowest))
              .toList();
      group(rows, where, hold.readings(), feeds);
    }
    run.measured()
        .map(MeasuredRun::readings)
        .filter(all -> !all.isEmpty())
        .ifPresent(all -> group(rows, page.say("expert.whole"), all, List.of()));
    return m.tag(
        "table.all", m.tag("thead", m.tag("tr", wide(page.say("expert.read.head")))), rows);
  }

  /** What was read, three in a row; then what was not. */
  private void group(
      Element rows, String title, Map<Quantity, Reading> readings, List<Element> more) {
    rows.appendChild(m.tag("tr", wide(title)));
    List<Element> read = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (Quantity quantity : Quantity.values()) { // in their order: two certificates line up
      Reading reading = readings.get(quantity);
      if (reading != null) {
        figure(reading)
            .ifPresentOrElse(
                figure -> read.add(cell(page.quantity(quantity), figure)),
                () -> missing.add(page.quantity(quantity)));
      }
    }
    read.addAll(more);
    chunks(read).forEach(rows::appendChild);
    if (!missing.isEmpty()) {
      Element cell = m.tag("td", page.say("expert.missing", String.join("; ", missing)));
      cell.setAttribute("colspan", "3");
      rows.appendChild(m.tag("tr", cell));
    }
  }

  private Element wide(String text) {
    Element cell = m.tag("th", text);
    cell.setAttribute("colspan", "3");
    cell.setAttribute("scope", "colgroup");
    return cell;
  }

  /** Empty where it was not measured. */
  private Optional<String> figure(Reading reading) {
    return reading
        .measurement()
        .map(
            v -> {
              if (v.counted()) {
                return page.number(v.value(), 0);
              }
              Digits digits = Digits.of(v.unit(), Math.abs(v.value()), page.words().numerals());
              return digits.value(v) + " " + digits.u(v);
            });
  }

  /** The number never parts from its unit. */
  private Element cell(String title, String figure) {
    return m.tag("td", title + " ", m.tag("span.figure", figure));
  }

  private List<Element> chunks(List<Element> cells) {
    List<Element> rows = new ArrayList<>();
    for (int i = 0; i < cells.size(); i += 3) {
      Element row = m.tag("tr");
      for (int k = i; k < i + 3; k++) {
        row.appendChild(k < cells.size() ? cells.get(k) : m.tag("td", ""));
      }
      rows.add(row);
    }
    return rows;
  }

  private Element madeWith(RunRecord run) {
    Element rows = m.tag("tbody");
    for (EquipmentUsed used : run.equipment()) {
      rows.appendChild(
          row(
              page.foreign(used.role(), 20),
              page.foreign(used.identity(), 70),
              page.foreign(used.calibration(), 60)));
    }
    return table("equipment", rows);
  }

  private List<String> how(Dossier dossier, RunRecord run) {
    List<String> lines = new ArrayList<>();
    lines.add(
        page.say(
            "expert.profile",
            page.foreign(run.profileId(), 40),
            run.profileRevision(),
            run.profile().sha256(),
            run.family().sha256()));
    page.answered().forEach(text -> lines.add(answered(text)));
    lines.add(
        page.say(
            "expert.bench",
            page.foreign(run.bench(), 40),
            page.foreign(run.fixture(), 40),
            page.foreign(run.operator(), 40),
            page.foreign(run.software(), 60)));
    lines.add(
        page.say("expert.dates", page.day(dossier.core().received()), page.day(run.started())));
    List<RunRecord> same =
        dossier.runs().stream().filter(r -> r.purpose().equals(run.purpose())).toList();
    lines.add(page.say("expert.runs", run.number(), same.size(), tries(same)));
    run.measured().map(MeasuredRun::notes).orElse(List.of()).stream()
        .limit(6)
        .forEach(note -> lines.add(page.kept(note, 200)));
    return lines;
  }

  private String answered(Answered text) {
    String what = page.foreign(text.what(), 60);
    return text.signed()
        .map(s -> page.say("expert.signed", what, page.foreign(s.who(), 60), page.day(s.at())))
        .orElseGet(() -> page.say(text.delivered() ? "expert.delivered" : "expert.unsigned", what));
  }

  /** Each try counts: one that is not told is a lie. */
  private String tries(List<RunRecord> runs) {
    return String.join(
        ", ",
        runs.stream()
            .map(
                r ->
                    page.say(
                        "expert.try",
                        r.number(),
                        r.judgement().verdict().map(page::word).orElse(page.say("no-verdict"))))
            .toList());
  }

  private Element row(String... cells) {
    Element row = m.tag("tr");
    for (String cell : cells) {
      row.appendChild(m.tag("td", cell));
    }
    return row;
  }

  private Element table(String kind, Element rows) {
    Element head = m.tag("tr");
    for (String title : page.list("expert." + kind)) {
      Element cell = m.tag("th", title);
      cell.setAttribute("scope", "col");
      head.appendChild(cell);
    }
    return m.tag("table.all " + kind, m.tag("thead", head), rows);
  }
}
