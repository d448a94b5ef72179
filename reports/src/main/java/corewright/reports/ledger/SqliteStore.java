package corewright.reports.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** One file on this machine. */
record SqliteStore(String url, Path file) implements Store {
  private static final int BUSY_MS = 30_000;

  static SqliteStore of(String url) {
    return new SqliteStore(
        url, Path.of(url.substring(Urls.SQLITE.length())).toAbsolutePath().normalize());
  }

  @Override
  public String place() {
    return file.toString();
  }

  /**
   * FULL: what was acknowledged is on the disk. IMMEDIATE: a transaction that will write says so at
   * once, so that two of them queue instead of failing half-way.
   */
  @Override
  public Connection connect() throws SQLException {
    return source().getConnection();
  }

  @Override
  public Connection connectToRead() throws SQLException {
    if (!Files.isRegularFile(file)) {
      throw new LedgerFault("There is no ledger " + file, "Name the file, or the shop's folder");
    }
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    config.setBusyTimeout(BUSY_MS);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl(isFrozen() ? frozen() : url);
    return source.getConnection();
  }

  /**
   * Whether nobody can write where it lies and nothing waits in a write-ahead log: SQLite would
   * make files beside it even to read, and reads such a one only if told that it cannot change.
   */
  private boolean isFrozen() {
    Path log = file.resolveSibling(file.getFileName() + "-wal");
    return !Files.isWritable(file.resolveSibling("")) && Files.notExists(log);
  }

  /** As a URI, https://sqlite.org/uri.html: immutable. */
  String frozen() {
    return Urls.SQLITE + "file:" + file.toUri().getRawPath() + "?immutable=1";
  }

  /**
   * Under a lock on a file beside it, because SQLite has no lock that outlasts a single
   * transaction; and one thread at a time, because file locks are held by processes.
   */
  @Override
  public void migrate() throws IOException {
    Files.createDirectories(file.resolveSibling(""));
    Path lockFile = file.resolveSibling(file.getFileName() + ".lock");
    synchronized (SqliteStore.class) {
      try (FileChannel channel =
              FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          FileLock held = channel.lock()) {
        assert held.isValid();
        Migrations.SQLITE.run(source());
      }
    }
  }

  @Override
  public void lock(Handle handle) {
    // a transaction is begun as IMMEDIATE, and that is the lock
  }

  @Override
  public <T> T snapshot(Handle handle, Function<Handle, T> questions) {
    handle.execute("BEGIN DEFERRED");
    try {
      return questions.apply(handle);
    } finally {
      handle.execute("COMMIT");
    }
  }

  /** The name lies in the write-ahead log as well. */
  @Override
  public void wipe(Handle handle) {
    handle.execute("PRAGMA wal_checkpoint(TRUNCATE)");
  }

  @Override
  public void copyTo(Handle handle, Path copy) {
    handle.execute("VACUUM INTO ?", copy.toString());
  }

  @Override
  public void numberOn(Handle handle) {
    // it numbers on by itself
  }

  @Override
  public void mayLeave() {
    // into a database that is shared
  }

  @Override
  public void leaveFor(Handle handle, String place) {
    handle.execute(
        "CREATE TRIGGER event_is_kept_elsewhere BEFORE INSERT ON event BEGIN SELECT RAISE(ABORT, '"
            + Faults.MOVED
            + place.replace("'", "''")
            + "'); END");
  }

  private SQLiteDataSource source() {
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
}
