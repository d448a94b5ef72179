package corewright.reports.document;

import corewright.bench.record.RunRecord;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/** What was read, with U, limit and margin: one row a limit, at the hold where it was met worst. */
final class ReadingTable {
  private static final int MOST_ROWS = 8;
  private final Page page;
  private final Markup m;

  ReadingTable(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  Element of(RunRecord run) {
    Element table = m.tag("table.readings");
    table.appendChild(
        m.tag(
            "thead",
            m.tag(
                "tr",
                head("what"),
                head("n"),
                head("u"),
                head("limit"),
                head("margin"),
                head("outcome"))));
    Element body = m.tag("tbody");
    List<Row> all = Row.rows(page, run);
    List<Row> shown = shown(all, List.of());
    for (Row row : shown) {
      body.appendChild(row(row));
    }
    more(body, all.size() - shown.size());
    table.appendChild(body);
    return table;
  }

  /** As {@link #of}, with what the unit read when it arrived beside it. */
  Element both(RunRecord left, RunRecord arrived) {
    Element table = m.tag("table.readings beside");
    table.appendChild(
        m.tag(
            "thead",
            m.tag(
                "tr",
                head("what"),
                verdictHead("arrived", arrived),
                verdictHead("left", left),
                head("u"),
                head("limit"),
                head("spare"))));
    Element body = m.tag("tbody");
    List<Row> before = Row.rows(page, arrived);
    List<Row> all = Row.rows(page, left);
    List<Row> shown = shown(all, before);
    for (Row row : shown) {
      Optional<Row> earlier = find(before, row);
      body.appendChild(
          m.tag(
              "tr",
              rowHead(row),
              m.tag("td.o", earlier.map(Row::withU).orElse("–")),
              m.tag("td.n", row.value()),
              m.tag("td.u", row.u()),
              m.tag("td.limit", row.limit()),
              m.tag("td.spare", row.margin())));
    }
    more(body, all.size() - shown.size());
    table.appendChild(body);
    return table;
  }

  /** What the unit left with, beside how it came before and how it came back. */
  Element three(RunRecord left, RunRecord arrived, RunRecord returned) {
    List<Row> before = Row.rows(page, arrived);
    List<Row> after = Row.rows(page, returned);
    Element body = m.tag("tbody");
    List<Row> all = Row.rows(page, left);
    List<Row> shown = shown(all, Stream.concat(before.stream(), after.stream()).toList());
    for (Row row : shown) {
      body.appendChild(
          m.tag(
              "tr",
              rowHead(row),
              m.tag("td.o", find(before, row).map(Row::withU).orElse("–")),
              m.tag("td.o", row.withU()),
              m.tag("td.n", find(after, row).map(Row::value).orElse("–")),
              m.tag("td.u", find(after, row).map(Row::u).orElse("")),
              m.tag("td.limit", row.limit())));
    }
    more(body, all.size() - shown.size());
    return m.tag(
        "table.readings beside",
        m.tag(
            "thead",
            m.tag(
                "tr",
                head("what"),
                verdictHead("arrived", arrived),
                verdictHead("left", left),
                verdictHead("returned", returned),
                head("u"),
                head("limit"))),
        body);
  }

  /**
   * Where there is no room for all: what was not met in this run or in another of the unit, and the
   * first of the others.
   */
  private List<Row> shown(List<Row> rows, List<Row> others) {
    if (page.room().everyRow() || rows.size() <= MOST_ROWS) {
      return rows;
    }
    Set<String> told =
        Stream.concat(rows.stream(), others.stream())
            .filter(row -> !row.minor())
            .map(Row::id)
            .collect(Collectors.toSet());
    List<String> first =
        rows.stream()
            .map(Row::id)
            .filter(id -> !told.contains(id))
            .limit(Math.max(1, MOST_ROWS - told.size()))
            .toList();
    return rows.stream()
        .filter(row -> told.contains(row.id()) || first.contains(row.id()))
        .toList();
  }

  private void more(Element body, int left) {
    if (left > 0) {
      Element cell = m.tag("td", page.say("rows.more", left));
      cell.setAttribute("colspan", "6");
      body.appendChild(m.tag("tr", cell));
    }
  }

  /** What another run read of the same. */
  private static Optional<Row> find(List<Row> rows, Row like) {
    return rows.stream().filter(r -> r.id().equals(like.id())).findFirst();
  }

  private Element row(Row row) {
    Element outcome = m.tag("td.outcome");
    row.form()
        .ifPresent(form -> outcome.appendChild(m.drawing("small", form, page.say("word." + form))));
    outcome.appendChild(m.tag("span", row.outcome()));
    return m.tag(
        "tr",
        rowHead(row),
        m.tag("td.n", row.value()),
        m.tag("td.u", row.u()),
        m.tag("td.limit", row.limit()),
        m.tag("td.margin", row.margin()),
        outcome);
  }

  private Element rowHead(Row row) {
    Element head = m.tag("th", row.title());
    head.setAttribute("scope", "row");
    return head;
  }

  private Element head(String kind) {
    Element head = m.tag("th." + kind, page.say("column." + kind));
    head.setAttribute("scope", "col");
    return head;
  }

  private Element verdictHead(String key, RunRecord run) {
    Element head = m.tag("th." + (key.equals("left") ? "n" : "o"));
    head.setAttribute("scope", "col");
    run.judgement()
        .verdict()
        .ifPresent(v -> head.appendChild(m.drawing("small", v.name(), page.word(v))));
    head.appendChild(m.tag("span", page.say("column." + key)));
    return head;
  }
}
