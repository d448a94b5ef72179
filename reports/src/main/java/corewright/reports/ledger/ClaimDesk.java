package corewright.reports.ledger;

import corewright.bench.life.ClaimClass;
import corewright.bench.life.ClaimClass.Outcome;
import corewright.bench.life.Stage;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Claims under warranty: opened for what has left, closed with a class and its evidence. */
public final class ClaimDesk {
  private final Database database;
  private final Appender appender;

  ClaimDesk(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * What a claim came to.
   *
   * @param row of the table of claims that decided; see {@link corewright.bench.life.Claims}
   * @param evidence photographs, runs, readings, each a line; at least one
   * @param reason why the outcome is not the usual one; empty where it is
   */
  public record Closing(
      ClaimClass claimClass, String row, Outcome outcome, List<String> evidence, String reason) {
    public Closing {
      evidence = List.copyOf(evidence);
    }
  }

  /**
   * One claim.
   *
   * @param shippedVisit the visit that the unit left from
   * @param warrantyUntil last day of its warranty; empty: it left without one
   * @param claimClass empty while the claim is open, like outcome and closed
   */
  public record Claim(
      String tag,
      int shippedVisit,
      int ordinal,
      String opened,
      String symptom,
      String warrantyUntil,
      String claimClass,
      String outcome,
      String closed) {}

  /**
   * Opens a claim for a unit that has left.
   *
   * @param answers what was asked at intake, by question; see the command
   * @throws LedgerFault if the unit is here, never left, or has a claim open
   */
  public Claim open(String tag, String symptom, Map<String, String> answers, String who) {
    String known = Tags.read(tag);
    return database.write(
        handle -> {
          Stage stage =
              LifeView.find(handle, known)
                  .orElseThrow(() -> Appender.unknown(known))
                  .life()
                  .stage();
          if (stage != Stage.SHIPPED) {
            throw new LedgerFault(
                known + " is " + stage.words() + ": only what has left can be claimed for",
                "If it came back without a claim, look at what 'history' says");
          }
          if (all(handle, known).stream().anyMatch(c -> c.closed().isEmpty())) {
            throw new LedgerFault(
                known + " has a claim open already", "Receive the unit, test it, close the claim");
          }
          appender.append(
              handle,
              who,
              EventKind.CLAIM_OPENED,
              known,
              Json.tree(Map.of("symptom", symptom, "answers", answers)));
          return last(handle, known);
        });
  }

  /**
   * Closes the open claim of a unit.
   *
   * @throws LedgerFault if none is open, or if evidence is missing, or if an unusual outcome has no
   *     reason
   */
  public Claim close(String tag, Closing closing, String who) {
    String known = Tags.read(tag);
    return database.write(
        handle -> {
          if (all(handle, known).stream().noneMatch(c -> c.closed().isEmpty())) {
            throw new LedgerFault("No claim is open for " + known, "Open it with --symptom first");
          }
          if (closing.evidence().isEmpty()) {
            throw new LedgerFault(
                "A claim class without evidence",
                "Name the photograph, run or reading it rests on");
          }
          if (closing.outcome() != closing.claimClass().usual() && closing.reason().isBlank()) {
            throw new LedgerFault(
                closing.claimClass()
                    + " is usually "
                    + closing.claimClass().usual()
                    + ", not "
                    + closing.outcome(),
                "Give the reason");
          }
          appender.append(handle, who, EventKind.CLAIM_CLOSED, known, Json.tree(closing));
          return last(handle, known);
        });
  }

  /** The claims of a unit, oldest first. */
  public List<Claim> of(String tag) {
    return database.read(handle -> all(handle, Tags.read(tag)));
  }

  /** The claims that are open, the longest waiting first. */
  public List<Claim> waiting() {
    return database.read(handle -> ask(handle, " WHERE c.closed = '' ORDER BY c.opened, c.tag"));
  }

  /** What a claim came to; empty while it is open. A unit has one open claim at a time. */
  public Optional<Closing> closing(Claim claim) {
    return database.read(
        handle ->
            Events.of(handle, claim.tag()).stream()
                .filter(event -> event.kind().equals(EventKind.CLAIM_CLOSED.id()))
                .skip(claim.ordinal() - 1L)
                .findFirst()
                .map(event -> Json.record(Json.read(event.body()), Closing.class)));
  }

  private static Claim last(Handle handle, String tag) {
    List<Claim> all = all(handle, tag);
    return all.get(all.size() - 1);
  }

  private static List<Claim> all(Handle handle, String tag) {
    return ask(handle, " WHERE c.tag = ? ORDER BY c.ordinal", tag);
  }

  static List<Claim> every(Handle handle) {
    return ask(handle, " ORDER BY c.opened, c.tag");
  }

  private static List<Claim> ask(Handle handle, String which, Object... values) {
    return handle
        .select(
            "SELECT c.*, coalesce(s.warranty_until, '') AS warranty_until FROM claim c LEFT JOIN"
                + " shipment s ON s.tag = c.tag AND s.visit = c.shipped"
                + which,
            values)
        .map(
            (row, context) ->
                new Claim(
                    row.getString("tag"),
                    row.getInt("shipped"),
                    row.getInt("ordinal"),
                    row.getString("opened"),
                    row.getString("symptom"),
                    row.getString("warranty_until"),
                    row.getString("class"),
                    row.getString("outcome"),
                    row.getString("closed")))
        .list();
  }
}
