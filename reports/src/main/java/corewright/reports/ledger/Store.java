package corewright.reports.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/**
 * What the databases that can keep a ledger do each in their own way. Everything else is one SQL
 * text for all of them.
 */
interface Store {
  /** In words, for refusals. */
  String place();

  Connection connect() throws SQLException;

  /** Connects to what is there, with no more than the right to read. */
  Connection connectToRead() throws SQLException;

  /** Makes what is not there, and brings an older schema up to date, one process at a time. */
  void migrate() throws IOException, SQLException;

  /**
   * Makes every other writer wait until this transaction ends. A ledger has one writer at a time:
   * what was checked before something is written still holds when it has been written.
   */
  void lock(Handle handle);

  /** Asks several questions of one and the same state, whatever others write meanwhile. */
  <T> T snapshot(Handle handle, Function<Handle, T> questions);

  /** Takes what was removed off the disk too. */
  void wipe(Handle handle);

  /** Writes a whole copy into a new SQLite file. */
  void copyTo(Handle handle, Path file);

  /** Numbers the next event after those that were brought with numbers of their own. */
  void numberOn(Handle handle);

  /**
   * Whether this kind of ledger can move to another place.
   *
   * @throws LedgerFault if it cannot; it says what to do instead
   */
  void mayLeave();

  /** Refuses every further event, from whatever program: the ledger is elsewhere from now on. */
  void leaveFor(Handle handle, String place);
}
