package corewright.station.cli;

import corewright.bench.record.Identification;
import corewright.station.work.Outcome;
import java.util.ArrayList;
import java.util.List;

/** Where units have got to, as a table with one sentence each. */
final class OutcomeTable {
  private static final int SENTENCE = 92;
  private static final List<String> HEADS =
      List.of("tag", "serial", "family, build", "bench verdict", "disposition", "why");

  private OutcomeTable() {}

  static List<String> of(List<Outcome> outcomes) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADS);
    outcomes.forEach(o -> rows.add(row(o)));
    int[] widths = new int[HEADS.size() - 1];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    List<String> lines = new ArrayList<>();
    rows.forEach(row -> lines.addAll(lines(row, widths)));
    return lines;
  }

  private static List<String> row(Outcome o) {
    return List.of(
        o.core().tag(),
        o.core().serial(),
        o.core().family() + " " + o.identification().map(OutcomeTable::build).orElse("?"),
        o.run().judgement().verdict().map(Enum::name).orElse("no verdict"),
        o.decision().disposition().name(),
        o.decision().sentence()
            + (o.decision().question().isEmpty() ? "" : " Open: " + o.decision().question()));
  }

  /** A build that is not sure is asked, not said. */
  private static String build(Identification found) {
    return found.variant() + (found.band() == Identification.Band.UNCERTAIN ? "?" : "");
  }

  /** One row; a sentence that is too long goes on under itself. */
  private static List<String> lines(List<String> row, int[] widths) {
    StringBuilder head = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      head.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
    }
    List<String> lines = new ArrayList<>();
    String margin = head.toString();
    for (String part : Wrapped.lines(row.get(widths.length), SENTENCE)) {
      lines.add(margin + part);
      margin = " ".repeat(head.length());
    }
    return lines;
  }
}
