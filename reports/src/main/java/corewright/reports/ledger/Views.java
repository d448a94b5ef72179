package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.record.Decision;
import corewright.bench.record.RunRecord;
import java.time.LocalDate;
import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * Tables computed from the events, for questions about many units. They hold nothing that the
 * events do not: {@link #renew} empties them and makes them again.
 */
final class Views {
  /** Children before parents, as their foreign keys want them emptied. */
  static final List<String> TABLES =
      List.of(
          "finding",
          "run",
          "decision",
          "document",
          "confirmed",
          "attached",
          "claim",
          "shipment",
          "fitted",
          "lot",
          "agreement",
          "deposit",
          "seal",
          "brought",
          "life",
          "serial_tail",
          "visit",
          "unit");

  private Views() {}

  /** Counted up whenever the tables or what fills them change; older ones are made anew. */
  private static final int VERSION = 5;

  static boolean areOld(Handle handle) {
    return version(handle) < VERSION;
  }

  /** Makes the tables anew, and notes that they are of this version. */
  static int renew(Handle handle) {
    rebuild(handle);
    return handle.execute("UPDATE counter SET value = ? WHERE name = 'views'", VERSION);
  }

  private static int version(Handle handle) {
    return handle
        .createQuery("SELECT value FROM counter WHERE name = 'views'")
        .mapTo(Integer.class)
        .one();
  }

  private static void rebuild(Handle handle) {
    TABLES.forEach(table -> handle.execute("DELETE FROM " + table));
    handle
        .createQuery("SELECT * FROM event ORDER BY position")
        .map((row, context) -> Events.event(row))
        .useStream(events -> events.forEach(event -> apply(handle, event)));
  }

  /** Adds one event to the tables. */
  static void apply(Handle handle, Event event) {
    JsonNode body = Json.read(event.body());
    EventKind kind = EventKind.of(event.kind());
    if (kind == EventKind.LOT_RECEIVED) {
      WorkView.lot(handle, event, body);
      return;
    }
    if (kind.isOfNoUnit()) {
      AgreementView.apply(handle, event, kind, body);
      return;
    }
    switch (kind) {
      case RECEIVED -> received(handle, event, body);
      case BROUGHT -> {
        received(handle, event, body);
        Books.apply(handle, event, body);
      }
      case IDENTIFIED ->
          handle.execute(
              "UPDATE unit SET variant = ? WHERE tag = ?", text(body, "variant"), event.tag());
      case RUN_BEGUN -> runBegun(handle, event.tag(), body);
      case RUN_ENDED -> runEnded(handle, event.tag(), body);
      case DECIDED -> decided(handle, event, body);
      case DOCUMENTED ->
          handle.execute(
              "INSERT INTO document (tag, visit, kind, path, sha256, at) VALUES (?, ?, ?, ?, ?, ?)",
              event.tag(),
              visit(handle, event.tag()),
              text(body, "kind"),
              text(body, "path"),
              text(body, "sha256"),
              event.at());
      case RELABELLED -> Json.record(body, Relabelling.class).apply(handle, event.tag());
      case ANSWERED, REBUILT, AMENDED -> {
        // read from the events of the unit only
      }
      default -> WorkView.apply(handle, event, kind, body, visit(handle, event.tag()));
    }
    LifeView.apply(handle, event, kind, body);
    VisitView.apply(handle, event.tag(), kind, body, visit(handle, event.tag()));
  }

  private static void received(Handle handle, Event event, JsonNode core) {
    String key = Serials.key(text(core, "serial"));
    handle.execute(
        "INSERT INTO unit (tag, serial, serial_key, family, label, variant, visits)"
            + " VALUES (?, ?, ?, ?, ?, '', 1) ON CONFLICT (tag) DO UPDATE SET"
            + " serial = excluded.serial, serial_key = excluded.serial_key,"
            + " family = excluded.family, label = excluded.label, visits = unit.visits + 1",
        event.tag(),
        text(core, "serial"),
        key,
        text(core, "family"),
        text(core, "label"));
    Serials.keepTails(handle, key, event.tag());
    handle.execute(
        "INSERT INTO visit (tag, number, mode, customer, received, received_by)"
            + " VALUES (?, ?, ?, ?, ?, ?)",
        event.tag(),
        visit(handle, event.tag()),
        text(core, "mode"),
        text(core, "customer"),
        text(core, "received"),
        text(core, "receivedBy"));
  }

  private static void runBegun(Handle handle, String tag, JsonNode run) {
    handle.execute(
        "INSERT INTO run (id, tag, visit, purpose, number, source, started, operator, bench,"
            + " fixture, profile, capture) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"
            + " ON CONFLICT (id) DO NOTHING",
        text(run, "id"),
        tag,
        visit(handle, tag),
        text(run, "purpose"),
        run.get("number").asInt(),
        text(run, "source"),
        text(run, "started"),
        text(run, "operator"),
        text(run, "bench"),
        text(run, "fixture"),
        text(run, "profileId"),
        text(run, "capture"));
  }

  private static void runEnded(Handle handle, String tag, JsonNode body) {
    runBegun(handle, tag, body); // an import has no beginning of its own
    RunRecord run = Json.record(body, RunRecord.class);
    handle.execute(
        "UPDATE run SET capture = ?, ended = ?, end_kind = ?, verdict = ?, qualifier = ?"
            + " WHERE id = ?",
        run.capture(), // sealed under another name than it was begun with
        run.ended().toString(),
        run.end().kind().name(),
        run.judgement().verdict().map(Enum::name).orElse(null),
        run.judgement().qualifier().map(Enum::name).orElse(null),
        run.id());
    Findings.insert(handle, run);
  }

  private static void decided(Handle handle, Event event, JsonNode body) {
    Decision decision = Json.record(body, Decision.class);
    int visit = visit(handle, event.tag());
    int earlier =
        handle
            .createQuery("SELECT count(*) FROM decision WHERE tag = ? AND visit = ?")
            .bind(0, event.tag())
            .bind(1, visit)
            .mapTo(Integer.class)
            .one();
    handle.execute(
        "INSERT INTO decision (tag, visit, ordinal, at, row_id, disposition, destination,"
            + " question, owner, due) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        event.tag(),
        visit,
        earlier + 1,
        event.at(),
        decision.row(),
        decision.disposition().name(),
        decision.destination(),
        decision.question(),
        decision.owner(),
        decision.due().map(LocalDate::toString).orElse(null));
  }

  private static int visit(Handle handle, String tag) {
    return handle
        .createQuery("SELECT visits FROM unit WHERE tag = :tag")
        .bind("tag", tag)
        .mapTo(Integer.class)
        .one();
  }

  private static String text(JsonNode body, String field) {
    return body.get(field).asText();
  }
}
