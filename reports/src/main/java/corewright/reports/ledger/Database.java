package corewright.reports.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.function.Consumer;
import java.util.function.Function;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** The database behind a ledger: opened, brought up to date, and asked in whole transactions. */
final class Database implements AutoCloseable {
  private final Store store;
  private final Connections connections;
  private final Jdbi jdbi;

  private Database(Store store, Connections.Maker maker) throws SQLException {
    this.store = store;
    this.connections = new Connections(maker);
    this.jdbi = Jdbi.create(connections);
    connections.closeConnection(connections.openConnection());
  }

  /** Opens the ledger of a URL, makes it if there is none, and brings an older one up to date. */
  static Database open(String url) {
    Store store = Urls.store(url);
    try {
      store.migrate();
      return new Database(store, store::connect);
    } catch (IOException | SQLException | FlywayException | JdbiException e) {
      throw Faults.of("open the ledger " + store.place(), e);
    }
  }

  /** Opens what is there, changes nothing, and needs no more than the right to read. */
  static Database openReadOnly(String url) {
    Store store = Urls.store(url);
    try {
      return new Database(store, store::connectToRead);
    } catch (SQLException e) {
      throw Faults.of("open the ledger " + store.place(), e);
    }
  }

  /** Everything in {@code work} or nothing of it; on disk when this returns. */
  <T> T write(Function<Handle, T> work) {
    try {
      return jdbi.inTransaction(
          handle -> {
            store.lock(handle);
            return work.apply(handle);
          });
    } catch (JdbiException e) {
      throw Faults.of("write to the ledger", e);
    }
  }

  /** Does something while nobody else can write; after it this ledger refuses every event. */
  <T> T moving(Function<Handle, T> work, String place) {
    store.mayLeave();
    return write(
        handle -> {
          T done = work.apply(handle);
          store.leaveFor(handle, place);
          return done;
        });
  }

  /** Several questions to one and the same state, whatever others write meanwhile. */
  <T> T read(Function<Handle, T> questions) {
    return ask(handle -> store.snapshot(handle, questions));
  }

  /** Takes what was removed off the disk too. */
  void wipe() {
    tell(store::wipe);
  }

  /** Writes a whole copy into a new SQLite file, while others go on writing. */
  void copyTo(Path file) {
    tell(handle -> store.copyTo(handle, file));
  }

  @Override
  public void close() {
    try {
      connections.close();
    } catch (SQLException e) {
      throw Faults.of("close the ledger", e);
    }
  }

  private void tell(Consumer<Handle> what) {
    ask(
        handle -> {
          what.accept(handle);
          return true;
        });
  }

  private <T> T ask(Function<Handle, T> question) {
    try {
      return jdbi.withHandle(question::apply);
    } catch (JdbiException e) {
      throw Faults.of("read the ledger", e);
    }
  }
}
