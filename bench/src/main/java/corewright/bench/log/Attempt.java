package corewright.bench.log;

import corewright.bench.log.table.Row;
import java.util.List;

/**
 * One crank as found, with what was logged about it.
 *
 * @param rows from some seconds before to some seconds after, in the order of time
 * @param begin_s first sample that shows it, s
 * @param last_s last sample that shows it, s
 * @param end_s first sample that no longer does, s; {@code last_s} where the log ends in it
 * @param end why it ended
 */
record Attempt(
    List<Row> rows, double begin_s, double last_s, double end_s, End end, FoundBy foundBy) {

  Attempt {
    rows = List.copyOf(rows);
  }

  /** How a crank ends. */
  enum End {
    /** The starter was let go. */
    RELEASED,
    /** The engine runs by itself. */
    STARTED,
    /** The log ends, pauses or falls silent in it. */
    CUT_OFF,
    /** No starter turns so long: the times are wrong, or it is no crank. */
    TOO_LONG
  }

  /** What showed the crank. */
  enum FoundBy {
    SPEED,
    SUPPLY,
    /** A person gave the window. */
    PERSON
  }

  double length_s() {
    return end_s - begin_s;
  }
}
