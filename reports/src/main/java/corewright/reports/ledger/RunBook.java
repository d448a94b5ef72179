package corewright.reports.ledger;

import java.util.List;

/** What was run so far: numbers, runs that nobody ended, and what was said about a run later. */
public final class RunBook {
  private final Database database;
  private final Appender appender;

  RunBook(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /** The number that the next run of this unit and purpose carries, as in "run 3 of 3". */
  public int nextNumber(String tag, String purpose) {
    return database.read(handle -> Runs.highestNumber(handle, Tags.read(tag), purpose) + 1);
  }

  /**
   * Adds something to a closed run, beside it: the run stays as it was signed.
   *
   * @return the amendment, which names the event that it amends
   * @throws LedgerFault if no run of this id was closed, or if text, reason or name is missing
   */
  public Amendment amend(String run, String text, String reason, String who) {
    return database.write(
        handle -> {
          Amendment amendment = Runs.amendment(handle, run, text, reason, who);
          String tag = Runs.tagOf(handle, run);
          appender.append(handle, who, EventKind.AMENDED, tag, Json.tree(amendment));
          return amendment;
        });
  }

  /** What was added to this unit's runs, in the order it was added. */
  public List<Amendment> amendments(String tag) {
    return database.read(handle -> Runs.amendments(handle, Tags.read(tag)));
  }

  /** Runs that were begun and never ended: those in which a process died. */
  public List<RunBegun> unfinished() {
    return database.read(Runs::unfinished);
  }
}
