package corewright.reports.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** Copies a ledger row by row from one database to another: out of a shared one, and into it. */
final class Copying {
  /** What the other tables are computed from, and what belongs to no event. */
  private static final List<String> KEPT =
      List.of("content", "chain", "customer", "signer", "account", "event");

  private static final int BATCH = 1000;

  private final Handle from;
  private final Handle to;

  private Copying(Handle from, Handle to) {
    this.from = from;
    this.to = to;
  }

  /**
   * Copies everything into a ledger that has no event yet.
   *
   * @param from in a transaction that sees one state
   * @param url a new file, or a database
   * @return how many events were copied
   */
  static long into(Handle from, String url) {
    Store store = Urls.store(url);
    try (Database target = Database.open(url)) {
      return target.write(
          to -> {
            if (events(to) > 0) {
              throw new LedgerFault(
                  "There is a ledger at " + store.place() + " already",
                  "Name a database that holds none");
            }
            new Copying(from, to).all();
            store.numberOn(to);
            return events(to);
          });
    }
  }

  private void all() {
    to.execute("DELETE FROM counter");
    table("counter");
    KEPT.forEach(this::table);
    List<String> views = new ArrayList<>(Views.TABLES);
    Collections.reverse(views); // parents first
    views.forEach(this::table);
  }

  private void table(String name) {
    List<String> columns = Columns.of(from, name);
    PreparedBatch batch =
        to.prepareBatch(
            "INSERT INTO "
                + name
                + " ("
                + String.join(", ", columns)
                + ") VALUES ("
                + String.join(", ", Collections.nCopies(columns.size(), "?"))
                + ")");
    from.createQuery("SELECT * FROM " + name)
        .map((row, context) -> cells(row, columns.size()))
        .useStream(
            rows ->
                rows.forEach(
                    cells -> {
                      for (int i = 0; i < cells.size(); i++) {
                        batch.bind(i, cells.get(i));
                      }
                      batch.add();
                      if (batch.size() >= BATCH) {
                        batch.execute();
                      }
                    }));
    if (batch.size() > 0) {
      batch.execute();
    }
  }

  private static List<@Nullable Object> cells(ResultSet row, int columns) throws SQLException {
    List<@Nullable Object> cells = new ArrayList<>();
    for (int i = 1; i <= columns; i++) {
      cells.add(row.getObject(i));
    }
    return cells;
  }

  private static long events(Handle handle) {
    return handle.select("SELECT count(*) FROM event").mapTo(Long.class).one();
  }
}
