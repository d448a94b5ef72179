package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Core;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/**
 * Units from a shop's old books: what somebody once wrote down, marked as that. Nothing of it was
 * measured here, so nothing of it is ever certified.
 */
public final class Books {
  private final Database database;
  private final Appender appender;

  Books(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * One row.
   *
   * @param key what names the row in the old books; each is brought once
   * @param file name of the spreadsheet
   * @param line of the row, counted from 1
   * @param core without a tag; {@code receivedBy} says where it is from
   * @param shipped day it left, ISO 8601; empty: it is in the shop
   * @param kept what else the row said, by field
   */
  public record Entry(
      String key, String file, int line, Core core, String shipped, Map<String, String> kept) {
    public Entry {
      kept = Map.copyOf(kept);
    }
  }

  /**
   * A row that was brought before.
   *
   * @param same whether it said what it says now
   */
  public record Known(String tag, boolean same) {}

  /** Which of these rows are in the ledger, by key; of two with one key the first counts. */
  public Map<String, Known> known(Collection<Entry> entries) {
    return database.read(handle -> known(handle, entries));
  }

  /**
   * Brings rows, all of them or none. Rows that were brought before are passed over.
   *
   * @return the tags that were given, in the order of the rows
   * @throws LedgerFault if whoever does it may not
   */
  public List<String> bring(List<Entry> entries, String who) {
    return database.write(
        handle -> {
          Accounts.requireOwner(handle, who, "bring the old books in");
          Map<String, Known> known = known(handle, entries);
          List<String> tags = new ArrayList<>();
          for (Entry entry : entries) {
            if (!known.containsKey(entry.key())) {
              String tag = UnitRecord.freeTag(handle);
              Unsaid.refuse(
                  Json.tree(entry), entry.file() + ", line " + entry.line()); // says where it is
              appender.append(handle, who, EventKind.BROUGHT, tag, body(handle, entry, tag));
              tags.add(tag);
            }
          }
          return tags;
        });
  }

  private static Map<String, Known> known(Handle handle, Collection<Entry> entries) {
    Map<String, Known> known = new HashMap<>();
    for (Entry entry : entries) {
      handle
          .select("SELECT tag, content FROM brought WHERE row_key = ?", entry.key())
          .map(
              (row, context) ->
                  new Known(row.getString("tag"), row.getString("content").equals(content(entry))))
          .findOne()
          .ifPresent(before -> known.putIfAbsent(entry.key(), before));
    }
    return known;
  }

  private static JsonNode body(Handle handle, Entry entry, String tag) {
    ObjectNode body = (ObjectNode) Json.tree(entry.core());
    body.put("tag", tag);
    body.put("customer", Customers.code(handle, entry.core().customer()));
    ObjectNode books = body.putObject("books");
    books.put("key", entry.key());
    books.put("content", content(entry));
    books.put("file", entry.file());
    books.put("line", entry.line());
    books.put("shipped", entry.shipped());
    ObjectNode kept = books.putObject("kept");
    entry.kept().forEach(kept::put);
    return body;
  }

  /** Where the row stood does not count, nor which family was made of its words. */
  private static String content(Entry entry) {
    Core c = entry.core();
    return Hashes.of(
        Json.canonical(
            Json.tree(
                List.of(
                    c.serial(),
                    c.label(),
                    c.customer(),
                    c.complaint(),
                    c.received().toString(),
                    entry.shipped(),
                    entry.kept()))));
  }

  /** The row that keeps another from being brought twice, and the day it left. */
  static void apply(Handle handle, Event event, JsonNode body) {
    JsonNode books = body.get("books");
    handle.execute(
        "INSERT INTO brought (row_key, tag, content, file, line) VALUES (?, ?, ?, ?, ?)",
        books.get("key").asText(),
        event.tag(),
        books.get("content").asText(),
        books.get("file").asText(),
        books.get("line").asInt());
    String shipped = books.get("shipped").asText();
    if (!shipped.isEmpty()) {
      handle.execute(
          "INSERT INTO shipment (tag, visit, at, who, carrier, tracking, warranty_from,"
              + " warranty_until) VALUES (?, 1, ?, ?, '', '', '', '')",
          event.tag(),
          shipped + "T00:00:00.000000Z",
          event.who());
    }
  }
}
