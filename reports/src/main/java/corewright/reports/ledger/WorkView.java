package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import org.jdbi.v3.core.Handle;

/** What was fitted, sealed, shipped, graded, promised, attached and claimed, as rows. */
final class WorkView {
  private WorkView() {}

  static void apply(Handle handle, Event event, EventKind kind, JsonNode body, int visit) {
    switch (kind) {
      case WORKED -> worked(handle, event, body, visit);
      case SEALED ->
          handle.execute(
              "INSERT INTO seal (number, tag, visit, at, who) VALUES (?, ?, ?, ?, ?)",
              body.get("number").asText(),
              event.tag(),
              visit,
              event.at(),
              event.who());
      case SHIPPED ->
          handle.execute(
              "INSERT INTO shipment (tag, visit, at, who, carrier, tracking, warranty_from,"
                  + " warranty_until) VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (tag, visit) DO"
                  + " UPDATE SET at = excluded.at, who = excluded.who, carrier = excluded.carrier,"
                  + " tracking = excluded.tracking, warranty_from = excluded.warranty_from,"
                  + " warranty_until = excluded.warranty_until",
              event.tag(),
              visit,
              event.at(),
              event.who(),
              body.get("carrier").asText(),
              body.get("tracking").asText(),
              body.get("warrantyFrom").asText(),
              body.get("warrantyUntil").asText());
      case GRADED ->
          handle.execute(
              "UPDATE life SET grade = ? WHERE tag = ?", body.get("grade").asText(), event.tag());
      case PROMISED ->
          handle.execute(
              "UPDATE visit SET promised = ? WHERE tag = ? AND number = ?",
              body.get("until").asText(),
              event.tag(),
              visit);
      case ATTACHED ->
          handle.execute(
              "INSERT INTO attached (tag, visit, sha256, name, kind, note, who, at)"
                  + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
              event.tag(),
              visit,
              body.get("sha256").asText(),
              body.get("name").asText(),
              body.get("kind").asText(),
              body.get("note").asText(),
              event.who(),
              event.at());
      case CONFIRMED ->
          Facts.insert(
              handle, event, body.get("fault").asText(), body.get("predicted").asText(), visit);
      case CLAIM_OPENED ->
          handle.execute(
              "INSERT INTO claim (tag, shipped, ordinal, opened, symptom, class, outcome, closed)"
                  + " VALUES (?, ?, (SELECT count(*) + 1 FROM claim c WHERE c.tag = ?), ?, ?, '',"
                  + " '', '')",
              event.tag(),
              visit,
              event.tag(),
              event.at(),
              body.get("symptom").asText());
      case CLAIM_CLOSED ->
          handle.execute(
              "UPDATE claim SET class = ?, outcome = ?, closed = ? WHERE tag = ? AND closed = ''",
              body.get("claimClass").asText(),
              body.get("outcome").asText(),
              event.at(),
              event.tag());
      default -> {
        // nothing here
      }
    }
  }

  static void lot(Handle handle, Event event, JsonNode body) {
    handle.execute(
        "INSERT INTO lot (lot, part, quantity, remaining, supplier, date_code, received)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?)",
        body.get("lot").asText(),
        body.get("part").asText(),
        body.get("quantity").asInt(),
        body.get("quantity").asInt(),
        body.get("supplier").asText(),
        body.get("dateCode").asText(),
        event.at());
  }

  private static void worked(Handle handle, Event event, JsonNode body, int visit) {
    for (JsonNode part : body.get("fitted")) {
      String lot = part.get("lot").asText();
      handle.execute("UPDATE lot SET remaining = remaining - 1 WHERE lot = ?", lot);
      handle.execute(
          "INSERT INTO fitted (tag, visit, ordinal, place, part, lot, removed, who, at) VALUES (?,"
              + " ?, (SELECT count(*) + 1 FROM fitted f WHERE f.tag = ? AND f.visit = ?), ?, ?, ?,"
              + " ?, ?, ?)",
          event.tag(),
          visit,
          event.tag(),
          visit,
          part.get("place").asText(),
          part.get("part").asText(),
          lot,
          part.get("removed").asText(),
          event.who(),
          event.at());
    }
  }
}
