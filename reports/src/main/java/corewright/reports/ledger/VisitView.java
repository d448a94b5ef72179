package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.measures.Quantity;
import java.util.EnumSet;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** What a visit came to, in its row: the rest of the figures is counting. */
final class VisitView {
  private static final String OF_VISIT = " x.tag = visit.tag AND x.visit = visit.number";
  private static final String JUDGED = " AND x.verdict IN ('PASS', 'MARGINAL', 'FAIL', 'UNSAFE')";
  private static final String FINAL =
      OF_VISIT + " AND x.purpose = 'ship' AND x.source = 'BENCH'" + JUDGED;
  private static final String COME_TO =
      "UPDATE visit SET disposition = coalesce((SELECT x.disposition FROM decision x WHERE"
          + OF_VISIT
          + " ORDER BY x.ordinal DESC LIMIT 1), ''), arrival = coalesce((SELECT x.verdict FROM run"
          + " x WHERE"
          + OF_VISIT
          + " AND x.purpose <> 'ship'"
          + JUDGED
          + " ORDER BY x.started DESC LIMIT 1), ''), first_ship = coalesce((SELECT x.verdict FROM"
          + " run x WHERE"
          + FINAL
          + " ORDER BY x.started LIMIT 1), ''), ship_bench = coalesce((SELECT x.bench FROM run x"
          + " WHERE"
          + FINAL
          + " ORDER BY x.started LIMIT 1), ''), technician = coalesce((SELECT min(x.who) FROM"
          + " fitted x WHERE"
          + OF_VISIT
          + "), ''), shipped = coalesce((SELECT x.at FROM shipment x WHERE"
          + OF_VISIT
          + "), '') WHERE tag = ? AND number = ?";
  private static final String SEALED =
      "UPDATE visit SET sealed = (SELECT count(*) FROM (SELECT 1 FROM seal x WHERE"
          + OF_VISIT
          + " AND (x.voided IS NULL OR (visit.shipped <> '' AND x.voided > visit.shipped)) LIMIT 1)"
          + " held) WHERE tag = ? AND number = ?";

  /**
   * Of the last run before the rebuild that says; {@code ALONE} where nothing else in it failed.
   */
  private static final String AT_TEMPERATURE =
      "coalesce((SELECT CASE WHEN f.outcome = 'FAIL' AND NOT EXISTS (SELECT 1 FROM finding o WHERE"
          + " o.run = f.run AND o.outcome = 'FAIL' AND o.quantity <> f.quantity) THEN 'ALONE' ELSE"
          + " f.outcome END FROM run x JOIN finding f ON f.run = x.id WHERE"
          + OF_VISIT
          + " AND x.purpose <> 'ship' AND f.quantity = '%s' AND f.outcome <> 'NOT_MEASURED' ORDER"
          + " BY x.started DESC, x.id DESC LIMIT 1), '')";

  private static final String TEMPERATURES =
      "UPDATE visit SET cold = "
          + AT_TEMPERATURE.formatted(Quantity.COLD_OUTPUT.id())
          + ", hot = "
          + AT_TEMPERATURE.formatted(Quantity.HOT_OUTPUT.id())
          + " WHERE tag = ? AND number = ?";

  /** The unit is one thing: what is known of it holds for its earlier visits too. */
  private static final String UNIT =
      "UPDATE visit SET family = (SELECT u.family FROM unit u WHERE u.tag = visit.tag), variant ="
          + " (SELECT u.variant FROM unit u WHERE u.tag = visit.tag), stage = CASE WHEN number < ?"
          + " THEN 'SHIPPED' ELSE coalesce((SELECT l.stage FROM life l WHERE l.tag = visit.tag),"
          + " '') END WHERE tag = ?";

  /** Others leave what it came to as it is. */
  private static final Set<EventKind> CHANGING =
      EnumSet.of(
          EventKind.BROUGHT,
          EventKind.DECIDED,
          EventKind.RUN_ENDED,
          EventKind.OPENED,
          EventKind.WORKED,
          EventKind.CLOSED,
          EventKind.SEALED,
          EventKind.SHIPPED,
          EventKind.STEPPED_BACK);

  private VisitView() {}

  static void apply(Handle handle, String tag, EventKind kind, JsonNode body, int visit) {
    if (!Acts.of(kind, body).isEmpty()) {
      handle.execute(UNIT, visit, tag);
    }
    if (kind == EventKind.RUN_ENDED) {
      handle.execute(TEMPERATURES, tag, visit);
    }
    if (CHANGING.contains(kind)) {
      handle.execute(COME_TO, tag, visit);
      handle.execute(SEALED, tag, visit);
    }
  }
}
