package corewright.reports.ledger;

import corewright.reports.ledger.ClaimDesk.Claim;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jdbi.v3.core.Handle;

/** What the owner's figures are counted from, as the record holds it. */
public final class Facts {
  private static final String VISITS =
      "SELECT v.*, u.serial, u.family, u.variant, u.visits, c.name, l.stage FROM visit v JOIN unit"
          + " u ON u.tag = v.tag LEFT JOIN life l ON l.tag = v.tag LEFT JOIN customer c ON c.code ="
          + " v.customer ORDER BY v.received, v.tag";

  private final Database database;
  private final Appender appender;

  Facts(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * A confirmed fault.
   *
   * @param predicted what was expected from outside; empty: nothing was
   */
  public record Confirmed(String tag, int visit, String fault, String predicted) {}

  /** Notes what a teardown showed. */
  public void confirm(String tag, String fault, String predicted, String who) {
    if (fault.isBlank()) {
      throw new LedgerFault("A teardown of " + tag + " without what it showed", "Name the group");
    }
    database.write(
        handle ->
            appender.append(
                handle,
                who,
                EventKind.CONFIRMED,
                tag,
                Json.tree(Map.of("fault", fault.strip(), "predicted", predicted.strip()))));
  }

  /** Every visit, in the order of reception. */
  public List<VisitFact> visits() {
    return database.read(
        handle -> handle.createQuery(VISITS).map((row, context) -> fact(row)).list());
  }

  /** Every claim. */
  public List<Claim> claims() {
    return database.read(ClaimDesk::every);
  }

  /** Every confirmed fault. */
  public List<Confirmed> confirmed() {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM confirmed ORDER BY at, tag")
                .map(
                    (row, context) ->
                        new Confirmed(
                            row.getString("tag"),
                            row.getInt("visit"),
                            row.getString("fault"),
                            row.getString("predicted")))
                .list());
  }

  static void insert(Handle handle, Event event, String fault, String predicted, int visit) {
    handle.execute(
        "INSERT INTO confirmed (tag, visit, fault, predicted, who, at) VALUES (?, ?, ?, ?, ?, ?)",
        event.tag(),
        visit,
        fault,
        predicted,
        event.who(),
        event.at());
  }

  private static VisitFact fact(ResultSet row) throws SQLException {
    boolean latest = row.getInt("number") == row.getInt("visits");
    String name = text(row, "name");
    return new VisitFact(
        row.getString("tag"),
        row.getInt("number"),
        row.getString("serial"),
        row.getString("family"),
        row.getString("variant"),
        row.getString("mode"),
        name.isEmpty() ? row.getString("customer") : name,
        row.getString("received"),
        text(row, "disposition"),
        text(row, "arrival"),
        text(row, "first_ship"),
        text(row, "ship_bench"),
        text(row, "technician"),
        row.getInt("sealed") > 0,
        latest ? text(row, "stage") : "SHIPPED",
        text(row, "shipped"));
  }

  private static String text(ResultSet row, String column) throws SQLException {
    return Objects.requireNonNullElse(row.getString(column), "");
  }
}
