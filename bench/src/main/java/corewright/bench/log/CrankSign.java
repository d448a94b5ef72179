package corewright.bench.log;

import corewright.bench.log.table.Row;

/** What in a row shows that the starter turns the engine. */
interface CrankSign {

  /** What one row says. */
  enum Says {
    CRANKING,
    /** The engine runs by itself. */
    RUNNING,
    /** Neither. */
    STILL,
    /** Nothing: the channel has no sample here. */
    NOTHING
  }

  Says look(Row row);

  /** Forgets what came before a pause. */
  void reset();

  /** A crank that is interrupted for less than this goes on, s. */
  double pause_s();

  Attempt.FoundBy foundBy();

  /** Whether what was found is a crank at all. */
  boolean isOne(Attempt attempt);
}
