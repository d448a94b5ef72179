package corewright.reports.ledger;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The system of record. Everything that happens to a unit is an event that is appended and never
 * changed; what {@link #dossier} and {@link #find} answer is computed from the events. What a
 * method has written is on the disk when it returns. Safe for use by several threads and by several
 * processes on one file. Every method throws {@link LedgerFault} where the database refuses.
 */
public final class Ledger extends UnitRecord implements AutoCloseable {
  private Ledger(Database database, Appender appender) {
    super(database, appender);
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

  /** The files that the record names by their hash; nothing is changed in or beside the ledger. */
  public static List<KeptFile> files(String url) {
    try (Database database = Database.openReadOnly(url)) {
      return database.read(handle -> KeptFile.of(handle, "")).stream()
          .filter(file -> !file.sha256().isEmpty())
          .toList();
    }
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
   * The same counted, in the same order: quick where thousands share.
   *
   * @param most how many tags of each are told, at least 1
   */
  public List<Sharing> sharing(String tag, int most) {
    return database.read(handle -> Siblings.counted(handle, Tags.read(tag), most));
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

  /** Names of customers, in order; of very many the first thousand. */
  public List<String> customers() {
    return database.read(Customers::names);
  }

  /** Whether a unit with this tag was ever received. */
  public boolean knows(String tag) {
    return database.read(handle -> Appender.isKnown(handle, Tags.read(tag)));
  }

  /**
   * Where this writer's chain ends now, to be printed on what leaves the shop; empty before its
   * first event.
   */
  public Optional<Head> head() {
    return database.read(appender::head);
  }

  /** Reads every event and says which were changed, are missing or stand in another order. */
  public Verification verify() {
    return database.read(handle -> Audit.of(handle, Expectations.NONE));
  }

  /** What was run so far. */
  public RunBook runs() {
    return new RunBook(database, appender);
  }

  /** Runs in short, of one unit or of many. */
  public RunLists runLists() {
    return new RunLists(database);
  }

  /** What was printed about units. */
  public Papers papers() {
    return new Papers(database, appender);
  }

  /** The ledger as a whole. */
  public Custody custody() {
    return new Custody(database, appender);
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
    return new Facts(database, appender, appender.zone());
  }

  /** Who signed which limits. */
  public SignOffs signOffs() {
    return new SignOffs(database, appender);
  }

  /** What was written down about the benches. */
  public Benches benches() {
    return new Benches(database, appender);
  }

  /** Units from old books. */
  public Books books() {
    return new Books(database, appender);
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

  @Override
  public void close() {
    database.close();
  }
}
