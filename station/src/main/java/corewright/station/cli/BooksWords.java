package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.reports.ledger.Books;
import corewright.station.work.books.Proposal;
import java.util.ArrayList;
import java.util.List;

/** What would be brought from old books, or was, in words. */
record BooksWords(Proposal proposal, List<String> tags) {

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Read with separator '"
            + (proposal.mapping().separator() == '\t' ? "tab" : proposal.mapping().separator())
            + "', decimal mark '"
            + proposal.mapping().decimal()
            + "', dates "
            + (proposal.mapping().dates().isEmpty()
                ? "that nobody can tell: say how under \"dates\" of a mapping"
                : "as " + proposal.mapping().dates()));
    proposal
        .mapping()
        .columns()
        .forEach((field, column) -> lines.add("  " + field.id() + " is '" + column + "'"));
    proposal.mapping().families().forEach((said, id) -> lines.add("  '" + said + "' is " + id));
    proposal.unused().forEach(column -> lines.add("  '" + column + "' stays behind"));
    for (int i = 0; i < proposal.fresh().size(); i++) {
      Books.Entry entry = proposal.fresh().get(i);
      lines.add(row(entry) + (i < tags.size() ? "  is " + tags.get(i) : ""));
    }
    proposal.before().forEach((tag, e) -> lines.add(row(e) + "  is there already: " + tag));
    proposal
        .refused()
        .forEach(r -> lines.add("line " + r.line() + ": NOT: " + r.what() + ". " + r.remedy()));
    lines.add(
        proposal.fresh().size()
            + (tags.isEmpty() ? " can be brought, " : " brought, ")
            + proposal.before().size()
            + " there already, "
            + proposal.refused().size()
            + " refused"
            + (tags.isEmpty() ? ". Nothing was written; --yes brings them." : ""));
    return lines;
  }

  ObjectNode json() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("file", proposal.file());
    json.set("mapping", proposal.mapping().json());
    proposal.unused().forEach(json.putArray("staysBehind")::add);
    json.put("brought", !tags.isEmpty());
    var fresh = json.putArray("rows");
    for (int i = 0; i < proposal.fresh().size(); i++) {
      Books.Entry entry = proposal.fresh().get(i);
      ObjectNode row = fresh.addObject();
      row.put("line", entry.line()).put("key", entry.key()).put("family", entry.core().family());
      row.put("serial", entry.core().serial()).put("received", received(entry));
      row.put("shipped", entry.shipped().isEmpty() ? null : entry.shipped());
      ObjectNode kept = row.putObject("kept");
      entry.kept().forEach(kept::put);
      row.put("tag", i < tags.size() ? tags.get(i) : null);
    }
    ObjectNode before = json.putObject("thereAlready");
    proposal.before().forEach((tag, entry) -> before.put(tag, entry.line()));
    var refused = json.putArray("refused");
    proposal
        .refused()
        .forEach(
            r ->
                refused
                    .addObject()
                    .put("line", r.line())
                    .put("what", r.what())
                    .put("remedy", r.remedy()));
    return json;
  }

  private static String row(Books.Entry entry) {
    return "line "
        + entry.line()
        + ": "
        + received(entry)
        + "  "
        + entry.core().family()
        + "  "
        + entry.core().serial()
        + "  "
        + entry.core().customer()
        + (entry.shipped().isEmpty() ? "  in the shop" : "  left " + entry.shipped())
        + (entry.kept().containsKey("output") ? "  " + entry.kept().get("output") + " V" : "")
        + (entry.kept().containsKey("price") ? "  price " + entry.kept().get("price") : "");
  }

  private static String received(Books.Entry entry) {
    return entry.core().received().toString().substring(0, 10);
  }
}
