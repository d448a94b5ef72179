package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What is written down about a unit on its way through the shop, and told again. */
public abstract sealed class UnitRecord permits Ledger {
  private static final int LATEST = Integer.MAX_VALUE;

  final Database database;
  final Appender appender;

  UnitRecord(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /** Takes the next free tag; it is never given out again, whether a unit follows or not. */
  public String nextTag() {
    return database.write(UnitRecord::freeTag);
  }

  static String freeTag(Handle handle) {
    String tag = Tags.of(Counters.next(handle, "unit"));
    while (Appender.isKnown(handle, tag)) {
      tag = Tags.of(Counters.next(handle, "unit"));
    }
    return tag;
  }

  /**
   * Receives a core under its tag. A tag that is known already begins its next visit.
   *
   * @return the visit, counted from 1
   * @throws LedgerFault if the tag is none, see {@link Tags#read}, or if it is that of a unit which
   *     is known by another serial
   */
  public int receive(Core core) {
    String tag = Tags.read(core.tag());
    return database.write(
        handle -> {
          Relabelling.refuseOther(handle, tag, core.serial(), "came back as");
          ObjectNode body = (ObjectNode) Json.tree(core);
          body.put("tag", tag);
          body.put("customer", Customers.code(handle, core.customer()));
          append(handle, core.receivedBy(), EventKind.RECEIVED, tag, body);
          return dossier(handle, tag, LATEST).visit();
        });
  }

  /** What people saw; a later answer to the same cue replaces the earlier one in the dossier. */
  public void answers(String tag, List<CueAnswer> answers) {
    if (!answers.isEmpty()) {
      answers(tag, answers, answers.get(0).who());
    }
  }

  /** The same, where somebody else answers for it: what a bench showed, by who ran it. */
  public void answers(String tag, List<CueAnswer> answers, String who) {
    append(who, EventKind.ANSWERED, tag, Map.of("answers", answers));
  }

  public void identified(String tag, Identification identification, String who) {
    append(who, EventKind.IDENTIFIED, tag, identification);
  }

  /**
   * Writes down that a run begins. Must return before anything is energised.
   *
   * @throws LedgerFault if a run of this id is known already, or the unit is on another bench
   */
  public void runBegun(RunBegun run) {
    database.write(
        handle -> {
          Runs.refuseKnown(handle, run.id());
          Runs.refuseOnOtherBench(handle, run);
          return append(handle, run.operator(), EventKind.RUN_BEGUN, run.tag(), Json.tree(run));
        });
  }

  /**
   * Closes a run, however it ended. A run that was not begun here (an import) is accepted too, and
   * the same record twice is kept once.
   *
   * @throws LedgerFault if another record closed the run before
   */
  public void runEnded(RunRecord run) {
    database.write(
        handle -> {
          ObjectNode body = (ObjectNode) Json.tree(run);
          Contents.lift(handle, body);
          return Runs.isEnded(handle, run, body)
              ? Optional.empty()
              : append(handle, run.operator(), EventKind.RUN_ENDED, run.tag(), body);
        });
  }

  public void decided(String tag, Decision decision, String who) {
    append(who, EventKind.DECIDED, tag, decision);
  }

  /**
   * @param lines what was done, each a line that a customer can read
   */
  public void rebuilt(String tag, List<String> lines, String who) {
    append(who, EventKind.REBUILT, tag, Map.of("lines", lines));
  }

  /**
   * Everything about the latest visit of a unit.
   *
   * @throws LedgerFault if there is no unit with this tag
   */
  public Dossier dossier(String tag) {
    return dossier(tag, LATEST);
  }

  /** Everything about one visit of a unit, or about its latest if it has had fewer. */
  public Dossier dossier(String tag, int visit) {
    return database.read(handle -> dossier(handle, Tags.read(tag), visit));
  }

  private void append(String who, EventKind kind, String tag, Object body) {
    database.write(handle -> append(handle, who, kind, tag, Json.tree(body)));
  }

  private Event append(Handle handle, String who, EventKind kind, String tag, JsonNode body) {
    return appender.append(handle, who, kind, tag, body);
  }

  private static Dossier dossier(Handle handle, String tag, int visit) {
    return Dossiers.tell(handle, tag, visit).orElseThrow(() -> Appender.unknown(tag));
  }
}
