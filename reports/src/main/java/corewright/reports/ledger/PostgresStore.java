package corewright.reports.ledger;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * A database that several benches share, PostgreSQL 14 or newer. The password is not in the URL: it
 * stands where the database's own programs look for it, in {@code ~/.pgpass} or {@code PGPASSFILE}.
 *
 * @param url as {@code jdbc:postgresql://host/database?user=name}
 */
record PostgresStore(String url) implements Store {
  /** Rows fetched at a time: a whole ledger does not fit into memory. */
  private static final int ROWS = 1000;

  /** The one encoding that has all of Unicode. */
  private static final String ENCODING = "UTF8";

  /** What writers queue for; any number that nobody else in the database uses. */
  private static final long WRITERS = 0x434F_5245L;

  /** Name and password are nobody's business. */
  @Override
  public String place() {
    int query = url.indexOf('?');
    return query < 0 ? url : url.substring(0, query);
  }

  /** Whatever the server's own default is: what was acknowledged is on its disk. */
  @Override
  public Connection connect() throws SQLException {
    Connection connection = source().getConnection();
    try (Statement settings = connection.createStatement()) {
      settings.execute("SET synchronous_commit = on");
      return connection;
    } catch (SQLException e) {
      connection.close();
      throw e;
    }
  }

  @Override
  public Connection connectToRead() throws SQLException {
    Connection connection = source().getConnection();
    connection.setReadOnly(true);
    return connection;
  }

  @Override
  public void migrate() throws SQLException {
    mustHaveEveryLetter();
    Migrations.POSTGRESQL.run(source());
  }

  /** Before anything is made there: of others, a ledger breaks off at its first Ω. */
  private void mustHaveEveryLetter() throws SQLException {
    try (Connection connection = source().getConnection();
        Statement asked = connection.createStatement();
        ResultSet answer = asked.executeQuery("SHOW server_encoding")) {
      String encoding = answer.next() ? answer.getString(1) : "";
      if (!encoding.equals(ENCODING)) {
        throw new LedgerFault(
            "The database " + place() + " keeps texts as " + encoding + ", without Ω and ±",
            "Ask the keeper of the database to make one with encoding " + ENCODING);
      }
    }
  }

  @Override
  public void lock(Handle handle) {
    handle
        .select("SELECT 1 FROM (SELECT pg_advisory_xact_lock(?)) held", WRITERS)
        .mapTo(Integer.class)
        .one();
  }

  @Override
  public <T> T snapshot(Handle handle, Function<Handle, T> questions) {
    return handle.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, questions::apply);
  }

  @Override
  public void wipe(Handle handle) {
    handle.execute("VACUUM FULL customer");
  }

  @Override
  public void copyTo(Handle handle, Path copy) {
    snapshot(handle, from -> Copying.into(from, Urls.of(copy)));
  }

  @Override
  public void numberOn(Handle handle) {
    handle
        .createQuery(
            "SELECT setval(pg_get_serial_sequence('event', 'position'),"
                + " (SELECT max(position) FROM event))")
        .mapTo(Long.class)
        .one();
  }

  @Override
  public void mayLeave() {
    throw new LedgerFault(
        "The ledger is shared already, at " + place(),
        "To keep it in a file again, make a backup and restore it");
  }

  @Override
  public void leaveFor(Handle handle, String place) {
    mayLeave();
  }

  private PGSimpleDataSource source() {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl(url);
    source.setApplicationName("corewright");
    source.setDefaultRowFetchSize(ROWS);
    return source;
  }
}
