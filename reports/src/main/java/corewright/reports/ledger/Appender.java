package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.ZoneId;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Writes an event and keeps the views in step, inside somebody's transaction. */
final class Appender {
  private final Events events;

  Appender(Events events) {
    this.events = events;
  }

  Event append(Handle handle, String who, EventKind kind, String subject, JsonNode body) {
    String known = Tags.read(subject);
    if (!EventKind.beginsAVisit(kind.id()) && !kind.isOfNoUnit() && !isKnown(handle, known)) {
      throw unknown(known);
    }
    Rights.require(handle, who, kind);
    if (kind != EventKind.RUN_BEGUN && kind != EventKind.RUN_ENDED) { // a run is always closed
      Unsaid.refuse(body, known + ", " + kind.id());
    }
    Event event = events.append(handle, who, kind, known, body);
    Views.apply(handle, event);
    return event;
  }

  Optional<Head> head(Handle handle) {
    return events.head(handle);
  }

  /** Where the shop stands. */
  ZoneId zone() {
    return events.zone();
  }

  static boolean isKnown(Handle handle, String tag) {
    return handle
        .select("SELECT 1 FROM unit WHERE tag = ?", tag)
        .mapTo(Integer.class)
        .findOne()
        .isPresent();
  }

  static LedgerFault unknown(String tag) {
    return new LedgerFault(
        "There is no unit " + tag, "Receive it first, or find it by the maker's serial");
  }
}
