package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.life.Act;
import corewright.bench.life.Life;
import corewright.bench.life.Stage;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** The stage of every unit as rows, kept up to date event by event. */
final class LifeView {
  /** A unit that gets here has no seal that holds. */
  private static final Set<Stage> UNSEALED = Set.of(Stage.OPEN, Stage.CLOSED, Stage.PROVEN);

  private LifeView() {}

  static Optional<Standing> find(Handle handle, String tag) {
    return handle
        .select("SELECT * FROM life WHERE tag = ?", tag)
        .map((row, context) -> standing(row))
        .findOne();
  }

  static List<Standing> at(Handle handle, Stage stage) {
    return handle
        .select("SELECT * FROM life WHERE stage = ? ORDER BY due, since, tag", stage.name())
        .map((row, context) -> standing(row))
        .list();
  }

  /** The first of them in that order. */
  static List<Standing> at(Handle handle, Stage stage, int most) {
    return handle
        .select(
            "SELECT * FROM life WHERE stage = ? ORDER BY due, since, tag LIMIT ?",
            stage.name(),
            most)
        .map((row, context) -> standing(row))
        .list();
  }

  static int count(Handle handle, Stage stage) {
    return handle
        .select("SELECT count(*) FROM life WHERE stage = ?", stage.name())
        .mapTo(Integer.class)
        .one();
  }

  static void apply(Handle handle, Event event, EventKind kind, JsonNode body) {
    List<Act> acts = Acts.of(kind, body);
    if (acts.isEmpty()) {
      return;
    }
    Life before = find(handle, event.tag()).map(Standing::life).orElse(Life.NEW);
    Life life = before;
    for (Act act : acts) {
      life = after(life, act);
    }
    if (hasLeft(kind, body)) {
      life = new Life(Stage.SHIPPED, Optional.empty(), false);
    }
    write(handle, event, before, life);
    if (kind == EventKind.HELD || kind == EventKind.DECIDED) {
      question(handle, event.tag(), life, body);
    }
    if (UNSEALED.contains(life.stage())) {
      handle.execute(
          "UPDATE seal SET voided = ? WHERE tag = ? AND voided IS NULL", event.at(), event.tag());
    }
  }

  /**
   * What was written down did happen: a unit that comes in again is here, and a step that the table
   * does not know leaves the stage as it was.
   */
  private static Life after(Life life, Act act) {
    return life.after(act)
        .orElse(act == Act.RECEIVE ? new Life(Stage.RECEIVED, Optional.empty(), false) : life);
  }

  /** A unit of the old books that had left before there was this record. */
  private static boolean hasLeft(EventKind kind, JsonNode body) {
    return kind == EventKind.BROUGHT && !body.at("/books/shipped").asText().isEmpty();
  }

  private static void write(Handle handle, Event event, Life before, Life life) {
    handle.execute(
        "INSERT INTO life (tag, visit, stage, before, safe, since, grade, question, owner, due)"
            + " VALUES (?, 1, ?, '', 0, ?, '', '', '', '') ON CONFLICT (tag) DO NOTHING",
        event.tag(),
        life.stage().name(),
        event.at());
    handle.execute(
        "UPDATE life SET visit = (SELECT visits FROM unit WHERE unit.tag = life.tag), stage = ?,"
            + " before = ?, safe = ? WHERE tag = ?",
        life.stage().name(),
        life.before().map(Enum::name).orElse(""),
        life.safe() ? 1 : 0,
        event.tag());
    if (before.stage() != life.stage()) {
      handle.execute(
          "UPDATE life SET since = ?, question = '', owner = '', due = '' WHERE tag = ?",
          event.at(),
          event.tag());
    }
  }

  private static void question(Handle handle, String tag, Life life, JsonNode body) {
    boolean open = life.stage() == Stage.PENDING;
    handle.execute(
        "UPDATE life SET question = ?, owner = ?, due = ? WHERE tag = ?",
        open ? body.path("question").asText() : "",
        open ? body.path("owner").asText() : "",
        open ? body.path("due").asText("") : "",
        tag);
  }

  static Standing standing(ResultSet row) throws SQLException {
    String before = row.getString("before");
    return new Standing(
        row.getString("tag"),
        row.getInt("visit"),
        new Life(
            Stage.valueOf(row.getString("stage")),
            before.isEmpty() ? Optional.empty() : Optional.of(Stage.valueOf(before)),
            row.getInt("safe") == 1),
        row.getString("since"),
        row.getString("grade"),
        row.getString("question"),
        row.getString("owner"),
        row.getString("due"));
  }
}
