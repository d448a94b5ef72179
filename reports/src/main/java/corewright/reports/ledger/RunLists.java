package corewright.reports.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Runs in short: the latest, those of one unit, and what siblings read at the same limit. */
public final class RunLists {
  private static final String RUN = "SELECT r.* FROM run r ";

  /** Holds of one run that are held against one limit; more than any profile has. */
  private static final int HOLDS = 16;

  private final Database database;

  RunLists(Database database) {
    this.database = database;
  }

  /**
   * What another unit read at one limit, where it met it worst.
   *
   * @param u standard uncertainty, in the quantity's own unit like the value
   */
  public record Beside(String run, String tag, double value, double u, double margin) {}

  /** One run; empty if there is none of this id. */
  public Optional<RunFact> find(String id) {
    return database.read(
        handle ->
            handle.select(RUN + "WHERE r.id = ?", id).map((row, context) -> fact(row)).findOne());
  }

  /** Every run of a unit, all visits, in the order they were begun. */
  public List<RunFact> of(String tag) {
    return database.read(
        handle ->
            handle
                .select(RUN + "WHERE r.tag = ? ORDER BY r.started, r.id", Tags.read(tag))
                .map((row, context) -> fact(row))
                .list());
  }

  /** The runs that were closed last, the latest first. */
  public List<RunFact> latest(int most) {
    return database.read(
        handle ->
            handle
                .select(
                    RUN
                        + "WHERE r.tag IN (SELECT tag FROM event WHERE kind = ? ORDER BY position"
                        + " DESC LIMIT ?) AND r.ended IS NOT NULL ORDER BY r.ended DESC LIMIT ?",
                    EventKind.RUN_ENDED.id(),
                    most,
                    most)
                .map((row, context) -> fact(row))
                .list());
  }

  /**
   * What units of the same build read at one limit under the same profile on the same bench, the
   * latest first: so that no difference between benches counts. A unit counts once.
   *
   * @param limit id of the limit
   */
  public List<Beside> beside(RunFact run, String limit, int most) {
    Map<String, Beside> worst = new LinkedHashMap<>();
    database
        .read(handle -> rows(handle, run, limit, most))
        .forEach(row -> worst.merge(row.tag(), row, RunLists::worse));
    return worst.values().stream().limit(most).toList();
  }

  /** Of one run the least margin; of two runs of a unit the later one. */
  private static Beside worse(Beside kept, Beside next) {
    return kept.run().equals(next.run()) && next.margin() < kept.margin() ? next : kept;
  }

  private static List<Beside> rows(Handle handle, RunFact run, String limit, int most) {
    return handle
        .select(
            "SELECT r.id, r.tag, f.value, f.u, f.margin FROM run r JOIN unit v ON v.tag = r.tag"
                + " JOIN finding f ON f.run = r.id WHERE r.bench = ? AND r.profile = ? AND r.source"
                + " = ? AND r.tag <> ? AND r.verdict IN ('PASS', 'MARGINAL', 'FAIL') AND v.variant"
                + " = (SELECT variant FROM unit WHERE tag = ?) AND f.limit_id = ? AND f.margin IS"
                + " NOT NULL ORDER BY r.started DESC LIMIT ?",
            run.bench(),
            run.profile(),
            run.source(),
            run.tag(),
            run.tag(),
            limit,
            most * HOLDS)
        .map(
            (row, context) ->
                new Beside(
                    row.getString("id"),
                    row.getString("tag"),
                    row.getDouble("value"),
                    row.getDouble("u"),
                    row.getDouble("margin")))
        .list();
  }

  /** Those of a list, the one that was begun last first. */
  public static Optional<RunFact> last(List<RunFact> runs) {
    return runs.stream().max(Comparator.comparing(RunFact::started));
  }

  private static RunFact fact(ResultSet row) throws SQLException {
    return new RunFact(
        row.getString("id"),
        row.getString("tag"),
        row.getInt("visit"),
        row.getString("purpose"),
        row.getInt("number"),
        row.getString("source"),
        row.getString("started"),
        row.getString("operator"),
        row.getString("bench"),
        row.getString("profile"),
        Objects.requireNonNullElse(row.getString("verdict"), ""));
  }
}
