package corewright.reports.document;

import corewright.bench.record.RunRecord;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;

/** What was read, with U, limit and margin: one row a limit, at the hold where it was met worst. */
final class ReadingTable {
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
    for (Row row : Row.rows(page, run)) {
      body.appendChild(row(row));
    }
    table.appendChild(body);
    return table;
  }

  /** As {@link #of}, with what the unit read when it arrived beside it. */
  Element both(RunRecord left, RunRecord arrived) {
    Element table = m.tag("table.readings");
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
    for (Row row : Row.rows(page, left)) {
      Optional<Row> earlier = before.stream().filter(r -> r.id().equals(row.id())).findFirst();
      body.appendChild(
          m.tag(
              "tr",
              rowHead(row),
              m.tag("td.o", earlier.map(Row::value).orElse("–")),
              m.tag("td.n", row.value()),
              m.tag("td.u", row.u()),
              m.tag("td.limit", row.limit()),
              m.tag("td.spare", row.margin())));
    }
    table.appendChild(body);
    return table;
  }

  /** What the unit left with, beside how it came before and how it came back. */
  Element three(RunRecord left, RunRecord arrived, RunRecord returned) {
    List<Row> before = Row.rows(page, arrived);
    List<Row> after = Row.rows(page, returned);
    Element body = m.tag("tbody");
    for (Row row : Row.rows(page, left)) {
      body.appendChild(
          m.tag(
              "tr",
              rowHead(row),
              m.tag("td.o", value(before, row)),
              m.tag("td.o", row.value()),
              m.tag("td.n", value(after, row)),
              m.tag("td.u", unit(after, row)),
              m.tag("td.limit", row.limit())));
    }
    return m.tag(
        "table.readings",
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

  private static String value(List<Row> rows, Row like) {
    return rows.stream()
        .filter(r -> r.id().equals(like.id()))
        .findFirst()
        .map(Row::value)
        .orElse("–");
  }

  private static String unit(List<Row> rows, Row like) {
    return rows.stream().filter(r -> r.id().equals(like.id())).findFirst().map(Row::u).orElse("");
  }

  private Element row(Row row) {
    Element outcome = m.tag("td.outcome");
    row.form().ifPresent(form -> outcome.appendChild(m.drawing("small", form, form)));
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
        .ifPresent(v -> head.appendChild(m.drawing("small", v.name(), v.name())));
    head.appendChild(m.tag("span", page.say("column." + key)));
    return head;
  }
}
