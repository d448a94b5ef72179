package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * The system of record. Everything that happens to a unit is an event that is appended and never
 * changed; what {@link #dossier} and {@link #find} answer is computed from the events. What a
 * method has written is on the disk when it returns. Safe for use by several threads and by several
 * processes on one file. Every method throws {@link LedgerFault} where the database refuses.
 */
public final class Ledger implements AutoCloseable {
  private static final int LATEST = Integer.MAX_VALUE;

  private final Database database;
  private final Appender appender;

  private Ledger(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * Opens the ledger in one file, makes it if there is none, and brings an older one up to date.
   *
   * @param chain who writes, as {@code bench-1}: the events of each writer are one hash chain
   * @param clock what the time of each event is read from
   */
  public static Ledger open(Path file, String chain, Clock clock) {
    return open(Urls.of(file), chain, clock, Optional.empty());
  }

  /** As {@link #open(Path, String, Clock)}, with the key that signs what is written. */
  public static Ledger open(Path file, String chain, Clock clock, SigningKey key) {
    return open(Urls.of(file), chain, clock, Optional.of(key));
  }

  /**
   * As {@link #open(Path, String, Clock)}, for the URL of a database.
   *
   * @param key what signs what is written; without one nobody can tell later who wrote it
   */
  public static Ledger open(String url, String chain, Clock clock, Optional<SigningKey> key) {
    Database database = Database.open(url);
    if (database.read(Views::areOld)) {
      database.write(Views::renew);
    }
    return new Ledger(database, new Appender(new Events(chain, clock, key)));
  }

  /**
   * Checks the ledger in one file without changing anything in or beside it.
   *
   * @param expectations what somebody outside knows: keys, heads
   * @throws LedgerFault if there is no ledger, or if the file cannot be read
   */
  public static Verification verify(Path file, Expectations expectations) {
    return verify(Urls.of(file), expectations);
  }

  /** As {@link #verify(Path, Expectations)}, for the URL of a database. */
  public static Verification verify(String url, Expectations expectations) {
    try (Database database = Database.openReadOnly(url)) {
      return database.read(handle -> Audit.of(handle, expectations));
    }
  }

  /** Takes the next free tag; it is never given out again, whether a unit follows or not. */
  public String nextTag() {
    return database.write(
        handle -> {
          String tag = Tags.of(Counters.next(handle, "unit"));
          while (Appender.isKnown(handle, tag)) {
            tag = Tags.of(Counters.next(handle, "unit"));
          }
          return tag;
        });
  }

  /**
   * Receives a core under its tag. A tag that is known already begins its next visit.
   *
   * @return the visit, counted from 1
   * @throws LedgerFault if the tag is none, see {@link Tags#read}
   */
  public int receive(Core core) {
    String tag = Tags.read(core.tag());
    return database.write(
        handle -> {
          ObjectNode body = (ObjectNode) Json.tree(core);
          body.put("tag", tag);
          body.put("customer", Customers.code(handle, core.customer()));
          append(handle, core.receivedBy(), EventKind.RECEIVED, tag, body);
          return dossier(handle, tag, LATEST).visit();
        });
  }

  /** What people saw; a later answer to the same cue replaces the earlier one in the dossier. */
  public void answers(String tag, List<CueAnswer> answers) {
    if (!answers.isEmpty()) {
      append(answers.get(0).who(), EventKind.ANSWERED, tag, Map.of("answers", answers));
    }
  }

  public void identified(String tag, Identification identification, String who) {
    append(who, EventKind.IDENTIFIED, tag, identification);
  }

  /** The number that the next run of this unit and purpose carries, as in "run 3 of 3". */
  public int nextRunNumber(String tag, String purpose) {
    return database.read(handle -> Runs.highestNumber(handle, Tags.read(tag), purpose) + 1);
  }

  /**
   * Writes down that a run begins. Must return before anything is energised.
   *
   * @throws LedgerFault if a run of this id is known already, or the unit is on another bench
   */
  public void runBegun(RunBegun run) {
    database.write(
        handle -> {
          Runs.refuseKnown(handle, run.id());
          Runs.refuseOnOtherBench(handle, run);
          return append(handle, run.operator(), EventKind.RUN_BEGUN, run.tag(), Json.tree(run));
        });
  }

  /**
   * Closes a run, however it ended. A run that was not begun here (an import) is accepted too, and
   * the same record twice is kept once.
   *
   * @throws LedgerFault if another record closed the run before
   */
  public void runEnded(RunRecord run) {
    database.write(
        handle -> {
          ObjectNode body = (ObjectNode) Json.tree(run);
          Contents.lift(handle, body);
          return Runs.isEnded(handle, run, body)
              ? Optional.empty()
              : append(handle, run.operator(), EventKind.RUN_ENDED, run.tag(), body);
        });
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
          append(handle, who, EventKind.AMENDED, tag, Json.tree(amendment));
          return amendment;
        });
  }

  /** What was added to this unit's runs, in the order it was added. */
  public List<Amendment> amendments(String tag) {
    return database.read(handle -> Runs.amendments(handle, Tags.read(tag)));
  }

  /** Runs that were begun and never ended: those in which a process died. */
  public List<RunBegun> unfinishedRuns() {
    return database.read(Runs::unfinished);
  }

  public void decided(String tag, Decision decision, String who) {
    append(who, EventKind.DECIDED, tag, decision);
  }

  /**
   * @param lines what was done, each a line that a customer can read
   */
  public void rebuilt(String tag, List<String> lines, String who) {
    append(who, EventKind.REBUILT, tag, Map.of("lines", lines));
  }

  /**
   * A document was made.
   *
   * @param kind as {@code test report}
   * @param sha256 of its bytes, lower-case hex
   */
  public void documented(String tag, String kind, Path file, String sha256, String who) {
    append(
        who,
        EventKind.DOCUMENTED,
        tag,
        Map.of("kind", kind, "path", file.toString(), "sha256", sha256));
  }

  /**
   * When a kind of document was first made about a unit since a moment, as its last run; empty if
   * it was not.
   */
  public Optional<Instant> firstDocumented(String tag, String kind, Instant since) {
    return database.read(
        handle ->
            handle
                .select("SELECT at FROM document WHERE tag = ? AND kind = ?", Tags.read(tag), kind)
                .mapTo(String.class)
                .map(Instant::parse)
                .stream()
                .filter(at -> !at.isBefore(since))
                .min(Comparator.naturalOrder()));
  }

  /**
   * Everything about the latest visit of a unit.
   *
   * @throws LedgerFault if there is no unit with this tag
   */
  public Dossier dossier(String tag) {
    return dossier(tag, LATEST);
  }

  /** Everything about one visit of a unit, or about its latest if it has had fewer. */
  public Dossier dossier(String tag, int visit) {
    return database.read(handle -> dossier(handle, Tags.read(tag), visit));
  }

  /** Units whose tag or maker's serial is or contains {@code text}, the best matches first. */
  public List<Found> find(String text) {
    return database.read(handle -> Search.find(handle, text));
  }

  /** Units that have all the properties given. */
  public List<Found> find(Query query) {
    return database.read(handle -> Finder.find(handle, query));
  }

  /**
   * Units that left and share something with this one's rebuild: by what they share, as {@code lot
   * LOT-7}, {@code technician M. Reyes}, {@code bench bench-1, week …}.
   */
  public Map<String, List<Found>> siblings(String tag) {
    return database.read(handle -> Siblings.of(handle, Tags.read(tag)));
  }

  /**
   * Writes everything into an existing folder: each table as CSV that no spreadsheet runs, every
   * event as a line of JSON.
   *
   * @param customer name of a customer whose units alone are wanted; empty: everything
   * @throws LedgerFault if there is no such customer
   */
  public void export(Path folder, Optional<String> customer) {
    database.read(
        handle -> {
          Export.write(
              handle, folder, customer.map(name -> Customers.known(handle, name)).orElse(""));
          return Optional.empty();
        });
  }

  /**
   * Removes a customer's name from the ledger for good. The technical history stays whole, under
   * the customer's code; that the name was removed, when and by whom is an event.
   *
   * @return paths of documents that still print the name, to be removed by hand
   * @throws LedgerFault if there is no such customer, or if a deposit of theirs is still owed
   */
  public List<String> forget(String customer, String reason, String who) {
    List<String> documents =
        database.write(
            handle -> {
              Accounts.requireOwner(handle, who, "remove names");
              String code = Customers.known(handle, customer);
              Deposits.refuseOwed(handle, code);
              appender.append(
                  handle, who, EventKind.FORGOTTEN, code, Json.tree(Map.of("reason", reason)));
              return Customers.forget(handle, code);
            });
    database.wipe();
    return documents;
  }

  /** Paths of the captures, and hashes of the files, that belong to a customer, or all. */
  public List<String> evidence(Optional<String> customer) {
    return database.read(
        handle ->
            Customers.evidence(
                handle, customer.map(name -> Customers.known(handle, name)).orElse("")));
  }

  /** Writes a whole copy of the ledger into a new SQLite file, while others go on writing. */
  public void copyTo(Path file) {
    database.copyTo(file);
  }

  /**
   * Moves the whole ledger from its file into a database that several benches share. From then on
   * the file refuses every further event, from whatever program.
   *
   * @param url as {@code jdbc:postgresql://host/database?user=name}, of a database without a ledger
   * @return what the copy was found to be; the file goes on being the ledger unless it is whole
   * @throws LedgerFault if the ledger is shared already, or if there is a ledger at the URL
   */
  public Verification moveTo(String url, String who) {
    String place = Urls.store(url).place();
    return database.moving(
        handle -> {
          Accounts.requireOwner(handle, who, "move the ledger");
          append(handle, who, EventKind.MOVED, "LEDGER", Json.tree(Map.of("to", place)));
          Copying.into(handle, url);
          Verification found = verify(url, new Expectations(List.of(), heads(handle)));
          if (!found.whole()) {
            throw new LedgerFault(
                "The copy at " + place + " is not whole: " + found.broken().get(0),
                "The ledger stays in its file; empty that database and try again");
          }
          return found;
        },
        place);
  }

  /** Where every chain ends now. */
  public List<Head> heads() {
    return database.read(Ledger::heads);
  }

  /** Tags of all units of a family, in order. */
  public List<String> units(String family) {
    return database.read(
        handle ->
            handle
                .select("SELECT tag FROM unit WHERE family = ? ORDER BY tag", family)
                .mapTo(String.class)
                .list());
  }

  /** Whether a unit with this tag was ever received. */
  public boolean knows(String tag) {
    return database.read(handle -> Appender.isKnown(handle, Tags.read(tag)));
  }

  /** Reads every event and says which were changed, are missing or stand in another order. */
  public Verification verify() {
    return database.read(handle -> Audit.of(handle, Expectations.NONE));
  }

  /**
   * Where this writer's chain ends now, to be printed on what leaves the shop; empty before its
   * first event.
   */
  public Optional<Head> head() {
    return database.read(appender::head);
  }

  /** The life of the units: stages, steps, holds, grades, files. */
  public Lives lives() {
    return new Lives(database, appender);
  }

  /** Claims under warranty. */
  public ClaimDesk claims() {
    return new ClaimDesk(database, appender);
  }

  /** Who may do what. */
  public Accounts accounts() {
    return new Accounts(database, appender);
  }

  /** What figures about many units are counted from. */
  public Facts facts() {
    return new Facts(database, appender);
  }

  /** Quotes and their return numbers. */
  public Agreements agreements() {
    return new Agreements(database, appender);
  }

  /** Core deposits. */
  public Deposits deposits() {
    return new Deposits(database, appender);
  }

  /** The store of parts. */
  public Stores stores() {
    return new Stores(database, appender);
  }

  /** Makes everything that is computed from the events anew. */
  public void rebuildViews() {
    database.write(Views::renew);
  }

  @Override
  public void close() {
    database.close();
  }

  private void append(String who, EventKind kind, String tag, Object body) {
    database.write(handle -> append(handle, who, kind, tag, Json.tree(body)));
  }

  private Event append(Handle handle, String who, EventKind kind, String tag, JsonNode body) {
    return appender.append(handle, who, kind, tag, body);
  }

  private static List<Head> heads(Handle handle) {
    return handle
        .createQuery("SELECT name, sequence, hash FROM chain ORDER BY name")
        .map(
            (row, context) ->
                new Head(row.getString("name"), row.getLong("sequence"), row.getString("hash")))
        .list();
  }

  private static Dossier dossier(Handle handle, String tag, int visit) {
    return Dossiers.tell(handle, tag, visit).orElseThrow(() -> Appender.unknown(tag));
  }
}
