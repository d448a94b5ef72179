package corewright.reports.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The database behind a ledger: opened, brought up to date, and asked in whole transactions. */
final class Database implements AutoCloseable {
  private static final String SQLITE = Urls.SQLITE;
  private static final int BUSY_MS = 30_000;

  /** Held here, or the level would be forgotten with the logger. */
  private static final Logger MIGRATIONS = Logger.getLogger("org.flywaydb");

  private final Jdbi jdbi;

  /** Keeps the file open: closing its last connection costs a checkpoint. */
  private final Connection keeper;

  private Database(Jdbi jdbi, Connection keeper) {
    this.jdbi = jdbi;
    this.keeper = keeper;
  }

  static Database open(String url) {
    refuseOther(url);
    Path file = file(url);
    DataSource source = sqlite(url);
    try {
      Files.createDirectories(file.resolveSibling(""));
      migrate(source, file);
      return new Database(Jdbi.create(source), source.getConnection());
    } catch (IOException | SQLException | FlywayException e) {
      throw Faults.of("open the ledger " + file, e);
    }
  }

  /** Opens what is there, changes nothing, and needs no more than the right to read. */
  static Database openReadOnly(String url) {
    refuseOther(url);
    Path file = file(url);
    if (!Files.isRegularFile(file)) {
      throw new LedgerFault("There is no ledger " + file, "Name the file, or the shop's folder");
    }
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    config.setBusyTimeout(BUSY_MS);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl(url);
    try {
      return new Database(Jdbi.create(source), source.getConnection());
    } catch (SQLException e) {
      throw Faults.of("open the ledger " + file, e);
    }
  }

  /** Everything in {@code work} or nothing of it; on disk when this returns. */
  <T> T write(Function<Handle, T> work) {
    try {
      return jdbi.inTransaction(work::apply);
    } catch (JdbiException e) {
      throw Faults.of("write to the ledger", e);
    }
  }

  /** Several questions to one and the same state, whatever others write meanwhile. */
  <T> T snapshot(Function<Handle, T> questions) {
    try {
      return jdbi.withHandle(
          handle -> {
            handle.execute("BEGIN DEFERRED");
            try {
              return questions.apply(handle);
            } finally {
              handle.execute("COMMIT");
            }
          });
    } catch (JdbiException e) {
      throw Faults.of("read the ledger", e);
    }
  }

  /** Takes what was removed out of the write-ahead log too. */
  void wipe() {
    read(handle -> handle.execute("PRAGMA wal_checkpoint(TRUNCATE)"));
  }

  <T> T read(Function<Handle, T> question) {
    try {
      return jdbi.withHandle(question::apply);
    } catch (JdbiException e) {
      throw Faults.of("read the ledger", e);
    }
  }

  @Override
  public void close() {
    try {
      keeper.close();
    } catch (SQLException e) {
      throw Faults.of("close the ledger", e);
    }
  }

  private static void refuseOther(String url) {
    if (!url.startsWith(SQLITE)) {
      throw new LedgerFault(
          "A ledger cannot be kept at '" + url + "'", "Give a file, or " + SQLITE + "FILE");
    }
  }

  private static Path file(String url) {
    return Path.of(url.substring(SQLITE.length())).toAbsolutePath();
  }

  /**
   * FULL: what was acknowledged is on the disk. IMMEDIATE: a transaction that will write says so at
   * once, so that two of them queue instead of failing half-way.
   */
  private static DataSource sqlite(String url) {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    config.enforceForeignKeys(true);
    config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true"); // a removed name is overwritten
    config.setBusyTimeout(BUSY_MS);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl(url);
    return source;
  }

  /**
   * One process at a time, and one thread of it, because file locks are held by processes: SQLite
   * has no lock that outlasts a single transaction.
   */
  private static synchronized void migrate(DataSource source, Path file) throws IOException {
    MIGRATIONS.setLevel(Level.WARNING);
    Path lockFile = file.resolveSibling(file.getFileName() + ".lock");
    try (FileChannel channel =
            FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock held = channel.lock()) {
      assert held.isValid();
      String home = "classpath:corewright/reports/ledger/";
      Flyway.configure()
          .dataSource(source)
          .locations(home + "common", home + "sqlite")
          .failOnMissingLocations(true)
          .placeholders(Map.of("identity", "INTEGER PRIMARY KEY AUTOINCREMENT", "text", "TEXT"))
          .load()
          .migrate();
    }
  }
}
