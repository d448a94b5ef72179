package corewright.reports.ledger;

import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

/**
 * The system of record. Everything that happens to a unit is an event that is appended and never
 * changed; what {@link #dossier} and {@link #find} answer is computed from the events. Safe for use
 * by several threads and by several processes on one file.
 */
@SuppressWarnings("DoNotCallSuggester") // being built
public final class Ledger implements AutoCloseable {

  private Ledger() {}

  /**
   * Opens the ledger in one file, makes it if there is none, and brings an older one up to date.
   *
   * @param chain who writes, as {@code bench-1}: the events of each writer are one hash chain
   * @param clock what the time of each event is read from
   */
  public static Ledger open(Path file, String chain, Clock clock) {
    return open("jdbc:sqlite:" + file, chain, clock);
  }

  /** As {@link #open(Path, String, Clock)}, for any URL of a database that is supported. */
  public static Ledger open(String url, String chain, Clock clock) {
    throw new UnsupportedOperationException("being built");
  }

  /** Takes the next free tag; it is never given out again, whether a unit follows or not. */
  public String nextTag() {
    throw new UnsupportedOperationException("being built");
  }

  /**
   * Receives a core under its tag. A tag that is known already begins its next visit.
   *
   * @return the visit, counted from 1
   */
  public int receive(Core core) {
    throw new UnsupportedOperationException("being built");
  }

  /** What people saw; a later answer to the same cue replaces the earlier one in the dossier. */
  public void answers(String tag, List<CueAnswer> answers) {
    throw new UnsupportedOperationException("being built");
  }

  public void identified(String tag, Identification identification, String who) {
    throw new UnsupportedOperationException("being built");
  }

  /** The number that the next run of this unit and purpose carries, as in "run 3 of 3". */
  public int nextRunNumber(String tag, String purpose) {
    throw new UnsupportedOperationException("being built");
  }

  /** Must return before anything is energised. */
  public void runBegun(RunBegun run) {
    throw new UnsupportedOperationException("being built");
  }

  /** Closes a run, however it ended. A run that was not begun here (an import) is accepted too. */
  public void runEnded(RunRecord run) {
    throw new UnsupportedOperationException("being built");
  }

  /** Runs that were begun and never ended: those in which a process died. */
  public List<RunBegun> unfinishedRuns() {
    throw new UnsupportedOperationException("being built");
  }

  public void decided(String tag, Decision decision, String who) {
    throw new UnsupportedOperationException("being built");
  }

  /**
   * @param lines what was done, each a line that a customer can read
   */
  public void rebuilt(String tag, List<String> lines, String who) {
    throw new UnsupportedOperationException("being built");
  }

  /**
   * A document was made.
   *
   * @param kind as {@code test report}
   * @param sha256 of its bytes, lower-case hex
   */
  public void documented(String tag, String kind, Path file, String sha256, String who) {
    throw new UnsupportedOperationException("being built");
  }

  /**
   * Everything about the latest visit of a unit.
   *
   * @throws LedgerFault if there is no unit with this tag
   */
  public Dossier dossier(String tag) {
    throw new UnsupportedOperationException("being built");
  }

  /** Units whose tag or maker's serial is or contains {@code text}, the best matches first. */
  public List<Found> find(String text) {
    throw new UnsupportedOperationException("being built");
  }

  /** Reads every event and says which were changed, are missing or stand in another order. */
  public Verification verify() {
    throw new UnsupportedOperationException("being built");
  }

  @Override
  public void close() {
    throw new UnsupportedOperationException("being built");
  }
}
