package corewright.reports.ledger;

import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.life.CoreCredit;
import corewright.profiles.Grade;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Core deposits: owed to the customer until the core was accepted, rejected, or never came. */
public final class Deposits {
  private final Database database;
  private final Appender appender;

  Deposits(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /** How a deposit ends. */
  public enum Ending {
    ACCEPTED,
    REJECTED,
    EXPIRED
  }

  /**
   * One deposit.
   *
   * @param due last day on which the core brings full credit
   * @param about what was sold for it, in words
   * @param outcome empty while it is owed
   * @param credit what was paid back
   * @param tag the core that came; empty if none
   */
  public record Deposit(
      String number,
      String customer,
      Money amount,
      String taken,
      String due,
      String about,
      String outcome,
      Money credit,
      String tag) {}

  /**
   * How a deposit shall be settled.
   *
   * @param tag the core; empty for {@link Ending#EXPIRED}
   * @param credit_percent what share is paid back
   * @param reason why the credit is not the usual one; empty where it is
   */
  public record Settlement(
      Ending ending, String tag, Grade grade, int credit_percent, String reason) {}

  /** Takes a deposit for a core that shall come within {@code window_days}. */
  public Deposit take(
      String customer, Money amount, int window_days, String about, LocalDate today, String who) {
    if (amount.hundredths() <= 0 || window_days < 1 || customer.isBlank()) {
      throw new LedgerFault("A deposit needs a customer, an amount and a window", "Give all three");
    }
    return database.write(
        handle -> {
          String number = Tags.of("D", Counters.next(handle, "deposit"));
          ObjectNode body = (ObjectNode) Json.tree(Map.of("about", about));
          body.put("customer", Customers.code(handle, customer));
          body.put("amount", amount.hundredths());
          body.put("currency", amount.currency());
          body.put("taken", today.toString());
          body.put("due", today.plusDays(window_days).toString());
          appender.append(handle, who, EventKind.DEPOSIT_TAKEN, number, body);
          return get(handle, number);
        });
  }

  /**
   * Settles a deposit.
   *
   * @throws LedgerFault if it was settled before, or the credit is not the usual one and has no
   *     reason
   */
  public Deposit settle(String number, Settlement settlement, LocalDate today, String who) {
    String known = Tags.read(number);
    return database.write(
        handle -> {
          Deposit open = get(handle, known);
          if (!open.outcome().isEmpty()) {
            throw new LedgerFault(
                known + " was settled before: " + open.outcome() + ", " + open.credit(),
                "A deposit is paid back once");
          }
          check(open, settlement, today);
          core(handle, settlement);
          ObjectNode body = (ObjectNode) Json.tree(settlement);
          if (!settlement.tag().isBlank()) {
            body.put("tag", Tags.read(settlement.tag()));
          }
          body.put("credit", open.amount().hundredths() * settlement.credit_percent() / 100);
          body.put("settled", today.toString());
          appender.append(handle, who, EventKind.DEPOSIT_SETTLED, known, body);
          return get(handle, known);
        });
  }

  /** What is owed, the most urgent first. */
  public List<Deposit> outstanding() {
    return database.read(
        handle ->
            handle
                .select("SELECT * FROM deposit WHERE outcome = '' ORDER BY due, number")
                .map((row, context) -> deposit(handle, row))
                .list());
  }

  static void refuseOwed(Handle handle, String code) {
    handle
        .select("SELECT number FROM deposit WHERE customer = ? AND outcome = ''", code)
        .mapTo(String.class)
        .findFirst()
        .ifPresent(
            number -> {
              throw new LedgerFault(
                  "Deposit " + number + " of " + code + " is still owed", "Settle it first");
            });
  }

  private static void check(Deposit open, Settlement settlement, LocalDate today) {
    int percent = settlement.credit_percent();
    if (percent < 0 || percent > 100) {
      throw new LedgerFault(percent + " % is no share of a deposit", "Give 0 to 100");
    }
    if (settlement.ending() == Ending.ACCEPTED && settlement.tag().isBlank()) {
      throw new LedgerFault("No core came for " + open.number(), "Name the core's tag");
    }
    long late = today.toEpochDay() - LocalDate.parse(open.due()).toEpochDay();
    CoreCredit usual =
        settlement.ending() == Ending.ACCEPTED
            ? CoreCredit.usual(settlement.grade(), late)
            : new CoreCredit(0, 0);
    boolean early = settlement.ending() == Ending.EXPIRED && late <= 0;
    if ((early || !usual.holds(percent)) && settlement.reason().isBlank()) {
      throw new LedgerFault(
          early
              ? open.number() + " runs until " + open.due()
              : String.format(
                  Locale.ROOT,
                  "%d %% is not what grade %s brings %d days after the window (%d to %d %%)",
                  percent,
                  settlement.grade(),
                  Math.max(0, late),
                  usual.least_percent(),
                  usual.most_percent()),
          "Give the reason");
    }
  }

  /** A core that was received here, and that no other deposit was paid back for on this visit. */
  private static void core(Handle handle, Settlement settlement) {
    if (settlement.tag().isBlank()) {
      return;
    }
    String tag = Tags.read(settlement.tag());
    if (!Appender.isKnown(handle, tag)) {
      throw Appender.unknown(tag);
    }
    handle
        .select(
            "SELECT d.number FROM deposit d JOIN event e ON e.tag = d.number AND e.kind = ?"
                + " WHERE d.tag = ? AND d.outcome = 'ACCEPTED' AND e.position >"
                + " (SELECT max(position) FROM event WHERE tag = ? AND kind IN (?, ?))",
            EventKind.DEPOSIT_SETTLED.id(),
            tag,
            tag,
            EventKind.RECEIVED.id(),
            EventKind.BROUGHT.id())
        .mapTo(String.class)
        .findFirst()
        .ifPresent(
            other -> {
              throw new LedgerFault(
                  tag + " has settled deposit " + other + " already",
                  "A core brings one deposit back; name the core that came for this one");
            });
  }

  private static Deposit get(Handle handle, String number) {
    return handle
        .select("SELECT * FROM deposit WHERE number = ?", number)
        .map((row, context) -> deposit(handle, row))
        .findOne()
        .orElseThrow(
            () -> new LedgerFault("There is no deposit " + number, "'deposit' lists them"));
  }

  private static Deposit deposit(Handle handle, ResultSet row) throws SQLException {
    String currency = row.getString("currency");
    return new Deposit(
        row.getString("number"),
        Customers.name(handle, row.getString("customer")),
        new Money(row.getLong("amount"), currency),
        row.getString("taken"),
        row.getString("due"),
        row.getString("about"),
        row.getString("outcome"),
        new Money(row.getLong("credit"), currency),
        row.getString("tag"));
  }
}
