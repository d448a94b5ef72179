package corewright.reports.ledger;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Quotes with their return numbers: offered, approved or declined, and the unit that came. */
public final class Agreements {
  private final Database database;
  private final Appender appender;

  Agreements(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * What is offered.
   *
   * @param mode {@code repair}, {@code exchange} or {@code stock}
   * @param price flat, or not to be exceeded
   * @param fee for the evaluation; kept if the offer is declined
   * @param approveBelow the customer agrees to anything up to this without being asked
   * @param until last day on which the offer stands
   * @param words what the customer says is wrong, and everything else that was agreed
   */
  public record Quote(
      String customer,
      String mode,
      String family,
      Money price,
      Money fee,
      Money approveBelow,
      LocalDate until,
      String words) {}

  /**
   * A quote and what became of it.
   *
   * @param state {@code quoted}, {@code approved} or {@code declined}
   * @param tag the unit that came under it; empty before
   */
  public record Agreement(
      String number,
      String customer,
      String mode,
      String family,
      Money price,
      Money fee,
      String until,
      String state,
      String answered,
      String tag) {}

  /**
   * Offers.
   *
   * @return the agreement; its number goes on the parcel
   */
  public Agreement quote(Quote quote, String who) {
    return database.write(
        handle -> {
          String number = Tags.of("R", Counters.next(handle, "agreement"));
          ObjectNode body = (ObjectNode) Json.tree(quote);
          body.put("customer", Customers.code(handle, quote.customer()));
          appender.append(handle, who, EventKind.QUOTED, number, body);
          return get(handle, number);
        });
  }

  /**
   * Notes the customer's answer.
   *
   * @param by who of the customer's people said so
   * @param channel mail, telephone, counter …
   * @throws LedgerFault if it was answered before, or its time is over
   */
  public Agreement answer(
      String number, boolean approved, String by, String channel, LocalDate today, String who) {
    String known = Tags.read(number);
    return database.write(
        handle -> {
          Agreement open = get(handle, known);
          if (!open.state().equals("quoted")) {
            throw new LedgerFault(
                known + " was " + open.state() + " before: " + open.answered(), "Make a new quote");
          }
          if (approved && open.until().compareTo(today.toString()) < 0) {
            throw new LedgerFault(
                known + " was offered until " + open.until(), "Make a new quote at today's price");
          }
          appender.append(
              handle,
              who,
              EventKind.ANSWERED_QUOTE,
              known,
              Json.tree(
                  Map.of(
                      "state",
                      approved ? "approved" : "declined",
                      "by",
                      Customers.code(handle, by),
                      "channel",
                      channel)));
          return get(handle, known);
        });
  }

  /**
   * A quote that a unit can come under.
   *
   * @param tag of the unit; empty for one that has none yet
   * @throws LedgerFault if there is no such quote, or another unit came under it
   */
  public Agreement free(String number, String tag) {
    return database.read(handle -> free(handle, Tags.read(number), tag));
  }

  private static Agreement free(Handle handle, String number, String tag) {
    Agreement agreement = get(handle, number);
    if (!agreement.tag().isEmpty()
        && !agreement.tag().equals(tag.isEmpty() ? "" : Tags.read(tag))) {
      throw new LedgerFault(
          agreement.tag() + " came under " + number + " already",
          "One number is for one unit; make a quote for this one too");
    }
    return agreement;
  }

  /** Notes which unit came under a number. */
  public Agreement arrived(String number, String tag, String who) {
    String known = Tags.read(number);
    return database.write(
        handle -> {
          free(handle, known, tag);
          appender.append(
              handle, who, EventKind.ARRIVED, known, Json.tree(Map.of("tag", Tags.read(tag))));
          return get(handle, known);
        });
  }

  public Agreement get(String number) {
    return database.read(handle -> get(handle, Tags.read(number)));
  }

  /** Everything offered under which no unit has come yet, the oldest first. */
  public List<Agreement> expected() {
    return database.read(
        handle ->
            handle
                .select(
                    "SELECT * FROM agreement WHERE tag = '' AND state <> 'declined' ORDER BY"
                        + " number")
                .map((row, context) -> agreement(handle, row))
                .list());
  }

  private static Agreement get(Handle handle, String number) {
    return handle
        .select("SELECT * FROM agreement WHERE number = ?", number)
        .map((row, context) -> agreement(handle, row))
        .findOne()
        .orElseThrow(() -> new LedgerFault("There is no quote " + number, "'quote' lists them"));
  }

  private static Agreement agreement(Handle handle, ResultSet row) throws SQLException {
    String currency = row.getString("currency");
    return new Agreement(
        row.getString("number"),
        Customers.name(handle, row.getString("customer")),
        row.getString("mode"),
        row.getString("family"),
        new Money(row.getLong("price"), currency),
        new Money(row.getLong("fee"), currency),
        row.getString("until"),
        row.getString("state"),
        Customers.named(handle, row.getString("answered")),
        row.getString("tag"));
  }
}
