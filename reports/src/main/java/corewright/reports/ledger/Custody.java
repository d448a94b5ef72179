package corewright.reports.ledger;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The ledger as a whole: proven, taken out, copied, moved, and names removed from it. */
public final class Custody {
  private final Database database;
  private final Appender appender;

  Custody(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * Writes everything into an existing folder: each table and every event as CSV that no
   * spreadsheet runs, as JSON and as HDF5.
   *
   * @param customer name of a customer whose units alone are wanted; empty: everything
   * @param vehicles whether what looks like the number of a vehicle goes out too
   * @param who does it; that it was done is an event
   * @return what was left out, a line for each place
   * @throws LedgerFault if there is no such customer, or if who may not: the whole shop is the
   *     owner's, and so are the numbers of vehicles
   */
  public List<String> export(Path folder, Optional<String> customer, boolean vehicles, String who) {
    database.write(
        handle -> {
          if (customer.isEmpty()) {
            Accounts.requireOwner(handle, who, "export the whole shop");
          }
          if (vehicles) {
            Accounts.requireOwner(handle, who, "give out the numbers of vehicles");
          }
          String of = customer.map(name -> Customers.known(handle, name)).orElse("everybody");
          Map<String, String> said =
              vehicles ? Map.of("of", of, "vehicles", "with their numbers") : Map.of("of", of);
          return appender.append(handle, who, EventKind.EXPORTED, "EXPORT", Json.tree(said));
        });
    return database.read(
        handle ->
            Export.write(
                handle,
                folder,
                customer.map(name -> Customers.known(handle, name)).orElse(""),
                vehicles));
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

  /**
   * What belongs to a customer, or all: captures, files by their hash, documents by their name, as
   * paths in the shop's folder.
   */
  public List<String> evidence(Optional<String> customer) {
    return database.read(
        handle ->
            KeptFile.of(handle, customer.map(name -> Customers.known(handle, name)).orElse(""))
                .stream()
                .map(KeptFile::path)
                .sorted()
                .toList());
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
          appender.append(handle, who, EventKind.MOVED, "LEDGER", Json.tree(Map.of("to", place)));
          Copying.into(handle, url);
          Verification found = Ledger.verify(url, new Expectations(List.of(), heads(handle)));
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
    return database.read(Custody::heads);
  }

  /** Makes everything that is computed from the events anew. */
  public void rebuildViews() {
    database.write(Views::renew);
  }

  private static List<Head> heads(Handle handle) {
    return handle
        .createQuery("SELECT name, sequence, hash FROM chain ORDER BY name")
        .map(
            (row, context) ->
                new Head(row.getString("name"), row.getLong("sequence"), row.getString("hash")))
        .list();
  }
}
