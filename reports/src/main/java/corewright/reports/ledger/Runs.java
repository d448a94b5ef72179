package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.life.Never;
import corewright.bench.record.RunRecord;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Questions about runs that the ledger asks itself before it writes. */
final class Runs {
  private Runs() {}

  /** The highest number among the runs of this unit and purpose; 0 if there is none. */
  static int highestNumber(Handle handle, String tag, String purpose) {
    return handle
        .select(
            "SELECT coalesce(max(number), 0) FROM run WHERE tag = ? AND purpose = ?", tag, purpose)
        .mapTo(Integer.class)
        .one();
  }

  static void refuseKnown(Handle handle, String id) {
    if (handle
        .select("SELECT 1 FROM run WHERE id = ?", id)
        .mapTo(Integer.class)
        .findOne()
        .isPresent()) {
      throw new LedgerFault(
          "Run " + id + " is in the ledger already", "Give each run an id of its own");
    }
  }

  /** A unit is on one bench at a time. */
  static void refuseOnOtherBench(Handle handle, RunBegun run) {
    handle
        .select(
            "SELECT id, bench FROM run WHERE tag = ? AND ended IS NULL AND bench <> ?",
            Tags.read(run.tag()),
            run.bench())
        .map((row, context) -> List.of(row.getString("id"), row.getString("bench")))
        .findFirst()
        .ifPresent(
            other -> {
              throw new LedgerFault(
                  "Unit " + run.tag() + " is on bench " + other.get(1) + " in run " + other.get(0),
                  "End that run first; if its program died, the next start on "
                      + other.get(1)
                      + " closes it");
            });
  }

  /**
   * Whether the run was closed before, by this very record.
   *
   * @param body the record as its event would hold it
   * @throws LedgerFault if another record closed it
   */
  static boolean isEnded(Handle handle, RunRecord run, JsonNode body) {
    String text = Json.canonical(body);
    for (String other : bodies(handle, Tags.read(run.tag()), EventKind.RUN_ENDED)) {
      if (other.equals(text)) {
        return true;
      }
      if (Json.read(other).get("id").asText().equals(run.id())) {
        throw new LedgerFault(
            Never.CHANGE_A_CLOSED_RUN.said(
                "Run " + run.id() + " was closed before, with other results"),
            Never.CHANGE_A_CLOSED_RUN.remedy());
      }
    }
    return false;
  }

  static String tagOf(Handle handle, String run) {
    return handle
        .select("SELECT tag FROM run WHERE id = ? AND ended IS NOT NULL", run)
        .mapTo(String.class)
        .findOne()
        .orElseThrow(
            () ->
                new LedgerFault("No run " + run + " was closed", "'show TAG' lists a unit's runs"));
  }

  static Amendment amendment(Handle handle, String run, String text, String reason, String who) {
    if (text.isBlank() || reason.isBlank() || who.isBlank()) {
      throw new LedgerFault(
          "An amendment of run " + run + " lacks what, why or who", "Give all three");
    }
    String original =
        Events.of(handle, tagOf(handle, run)).stream()
            .filter(e -> e.kind().equals(EventKind.RUN_ENDED.id()))
            .filter(e -> Json.read(e.body()).get("id").asText().equals(run))
            .map(Event::hash)
            .findFirst()
            .orElseThrow();
    return new Amendment(run, original, text.strip(), reason.strip(), who.strip());
  }

  static List<Amendment> amendments(Handle handle, String tag) {
    return bodies(handle, tag, EventKind.AMENDED).stream()
        .map(body -> Json.record(Json.read(body), Amendment.class))
        .toList();
  }

  static List<RunBegun> unfinished(Handle handle) {
    List<RunBegun> unfinished = new ArrayList<>();
    handle
        .select("SELECT id, tag FROM run WHERE ended IS NULL ORDER BY started, id")
        .map((row, context) -> List.of(row.getString("id"), row.getString("tag")))
        .list()
        .forEach(
            run ->
                bodies(handle, run.get(1), EventKind.RUN_BEGUN).stream()
                    .map(body -> Json.record(Json.read(body), RunBegun.class))
                    .filter(begun -> begun.id().equals(run.get(0)))
                    .forEach(unfinished::add));
    return unfinished;
  }

  private static List<String> bodies(Handle handle, String tag, EventKind kind) {
    return handle
        .select(
            "SELECT body FROM event WHERE tag = ? AND kind = ? ORDER BY position", tag, kind.id())
        .mapTo(String.class)
        .list();
  }
}
