package corewright.reports.ledger;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.ConcurrentLinkedDeque;
import org.jdbi.v3.core.ConnectionFactory;

/**
 * Keeps a few connections for the next question: making one takes longer than most questions, and
 * closing a file's last one costs a checkpoint.
 */
final class Connections implements ConnectionFactory, AutoCloseable {
  private static final int KEPT = 4;
  private static final int ALIVE_WITHIN_S = 5;

  /** Makes one. */
  interface Maker {
    Connection make() throws SQLException;
  }

  private final Maker maker;
  private final ConcurrentLinkedDeque<Connection> idle = new ConcurrentLinkedDeque<>();
  private volatile boolean closed;

  Connections(Maker maker) {
    this.maker = maker;
  }

  /** One that answers: a server may have been restarted since it was used last. */
  @Override
  public Connection openConnection() throws SQLException {
    for (Connection kept = idle.poll(); kept != null; kept = idle.poll()) {
      if (kept.isValid(ALIVE_WITHIN_S)) {
        return kept;
      }
      kept.close();
    }
    return maker.make();
  }

  @Override
  public void closeConnection(Connection used) throws SQLException {
    if (closed || idle.size() >= KEPT || used.isClosed() || !used.getAutoCommit()) {
      used.close();
    } else {
      idle.push(used);
    }
  }

  @Override
  public void close() throws SQLException {
    closed = true;
    for (Connection kept = idle.poll(); kept != null; kept = idle.poll()) {
      kept.close();
    }
  }
}
