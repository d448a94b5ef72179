package corewright.reports.ledger;

import corewright.bench.life.Stage;
import corewright.reports.ledger.ClaimDesk.Claim;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/** What the owner's figures are counted from, as the record holds it. */
public final class Facts {
  /** After every time of a day, whose text begins with the day. */
  private static final String END_OF_DAY = "~";

  /** The day after it would have five digits, and come before every other as a text. */
  private static final LocalDate LAST = LocalDate.of(9999, 12, 31);

  private final Database database;
  private final Appender appender;
  private final ZoneId zone;

  /**
   * @param zone where the shop stands: the days of its visits are those there
   */
  Facts(Database database, Appender appender, ZoneId zone) {
    this.database = database;
    this.appender = appender;
    this.zone = zone;
  }

  /**
   * A confirmed fault.
   *
   * @param predicted what was expected from outside; empty: nothing was
   */
  public record Confirmed(String tag, int visit, String fault, String predicted) {}

  /** Notes what a teardown showed. */
  public void confirm(String tag, String fault, String predicted, String who) {
    if (fault.isBlank()) {
      throw new LedgerFault("A teardown of " + tag + " without what it showed", "Name the group");
    }
    database.write(
        handle ->
            appender.append(
                handle,
                who,
                EventKind.CONFIRMED,
                tag,
                Json.tree(Map.of("fault", fault.strip(), "predicted", predicted.strip()))));
  }

  /** Every visit, in the order of reception. */
  public List<VisitFact> visits() {
    return database.read(handle -> VisitRows.read(handle, zone, ""));
  }

  /** Visits that began between two days, both included, in the order of reception. */
  public List<VisitFact> received(LocalDate from, LocalDate until) {
    return between("received", from, until, v -> Optional.of(v.received()));
  }

  /** Visits that ended with a shipment between two days, both included. */
  public List<VisitFact> shipped(LocalDate from, LocalDate until) {
    return between("shipped", from, until, VisitFact::shipped);
  }

  /** Visits with which a unit came again: the second of each, and those after it. */
  public List<VisitFact> later() {
    return database.read(handle -> VisitRows.read(handle, zone, " WHERE number > 1"));
  }

  /** Visits whose units stand at a stage now. */
  public List<VisitFact> at(Stage stage) {
    return database.read(
        handle ->
            VisitRows.read(
                handle,
                zone,
                " WHERE stage = ? AND tag IN (SELECT tag FROM life WHERE stage = ?)",
                stage.name(),
                stage.name()));
  }

  /** The record's times are UTC: a day of the shop reaches into the one before or after. */
  private List<VisitFact> between(
      String column,
      LocalDate from,
      LocalDate until,
      Function<VisitFact, Optional<LocalDate>> day) {
    return database
        .read(
            handle ->
                VisitRows.read(
                    handle,
                    zone,
                    " WHERE " + column + " >= ? AND " + column + " <= ?",
                    from.minusDays(1).toString(),
                    (until.isBefore(LAST) ? until.plusDays(1) : until) + END_OF_DAY))
        .stream()
        .filter(v -> day.apply(v).filter(d -> !d.isBefore(from) && !d.isAfter(until)).isPresent())
        .toList();
  }

  /** Every claim. */
  public List<Claim> claims() {
    return database.read(ClaimDesk::every);
  }

  /** Every confirmed fault. */
  public List<Confirmed> confirmed() {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM confirmed ORDER BY at, tag")
                .map(
                    (row, context) ->
                        new Confirmed(
                            row.getString("tag"),
                            row.getInt("visit"),
                            row.getString("fault"),
                            row.getString("predicted")))
                .list());
  }

  static void insert(Handle handle, Event event, String fault, String predicted, int visit) {
    handle.execute(
        "INSERT INTO confirmed (tag, visit, fault, predicted, who, at) VALUES (?, ?, ?, ?, ?, ?)",
        event.tag(),
        visit,
        fault,
        predicted,
        event.who(),
        event.at());
  }
}
