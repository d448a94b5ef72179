package corewright.reports.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The store of parts, by lot. */
public final class Stores {
  private final Database database;
  private final Appender appender;

  Stores(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * One lot.
   *
   * @param quantity how many came
   * @param remaining how many have not been fitted
   * @param dateCode of the part's maker, as printed; may be empty
   */
  public record Lot(
      String lot, String part, int quantity, int remaining, String supplier, String dateCode) {
    public Lot {
      lot = Tags.read(lot);
    }
  }

  /**
   * Takes a lot into store.
   *
   * @throws LedgerFault if the lot is known already, or holds nothing
   */
  public void take(Lot lot, String who) {
    if (lot.quantity() < 1 || lot.part().isBlank()) {
      throw new LedgerFault("Lot " + lot.lot() + " holds no parts", "Say what and how many");
    }
    database.write(
        handle -> {
          if (find(handle, lot.lot()).isPresent()) {
            throw new LedgerFault(
                "Lot " + lot.lot() + " is in store already",
                "Give a second delivery of it a name of its own, as " + lot.lot() + "-2");
          }
          return appender.append(
              handle,
              who,
              EventKind.LOT_RECEIVED,
              lot.lot(),
              Json.tree(
                  Map.of(
                      "lot", lot.lot(),
                      "part", lot.part(),
                      "quantity", lot.quantity(),
                      "supplier", lot.supplier(),
                      "dateCode", lot.dateCode())));
        });
  }

  /** Every lot, by part and age. */
  public List<Lot> lots() {
    return database.read(
        handle ->
            handle
                .select("SELECT * FROM lot ORDER BY part, received, lot")
                .map((row, context) -> lot(row))
                .list());
  }

  static Optional<Lot> find(Handle handle, String name) {
    return handle
        .select("SELECT * FROM lot WHERE lot = ?", name)
        .map((row, context) -> lot(row))
        .findOne();
  }

  private static Lot lot(ResultSet row) throws SQLException {
    return new Lot(
        row.getString("lot"),
        row.getString("part"),
        row.getInt("quantity"),
        row.getInt("remaining"),
        row.getString("supplier"),
        row.getString("date_code"));
  }
}
