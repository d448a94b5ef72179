package corewright.reports.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Reads visits to be counted, a million of them. A row comes as one text: asking it for fifteen
 * columns takes longer than the database takes to find it. What many rows have in common, their
 * days, customers and outcomes, is kept once.
 */
final class VisitRows {
  /** A control character; where one stands in a name, a space is read. */
  private static final String BETWEEN = "\u001f";

  private static final char END = BETWEEN.charAt(0);

  /** A day and a customer are shared by many visits, and so is what the visit came to. */
  private static final String VISITS =
      "SELECT "
          + String.join(
              " || '" + BETWEEN + "' || ",
              "v.tag",
              "v.number",
              "substr(v.received, 1, 10)",
              "substr(v.shipped, 1, 10)",
              name("v.customer"),
              name("u.family"),
              name("u.variant"),
              name("v.mode"),
              "v.disposition",
              "v.arrival",
              "v.first_ship",
              name("v.ship_bench"),
              name("v.technician"),
              "v.sealed",
              "CASE WHEN v.number = u.visits THEN coalesce(l.stage, '') ELSE 'SHIPPED' END")
          + " FROM visit v JOIN unit u ON u.tag = v.tag LEFT JOIN life l ON l.tag = v.tag";

  /** Nearly the order in which they lie there, so it is quicker put right here than there. */
  private static final Comparator<VisitFact> AS_RECEIVED =
      Comparator.comparing(VisitFact::received)
          .thenComparing(VisitFact::tag)
          .thenComparingInt(VisitFact::visit);

  private final Map<String, Optional<LocalDate>> days = new HashMap<>();
  private final Map<String, String> customers = new HashMap<>();
  private final Map<String, List<String>> outcomes = new HashMap<>();

  private VisitRows(Handle handle) {
    handle
        .createQuery("SELECT code, name FROM customer")
        .map((row, context) -> customers.put(row.getString(1), row.getString(2)))
        .list();
  }

  /**
   * Reads them in the order of reception.
   *
   * @param which a condition on the visit {@code v}; empty: all of them
   */
  static List<VisitFact> read(Handle handle, String which, String... values) {
    VisitRows rows = new VisitRows(handle);
    List<VisitFact> visits =
        new ArrayList<>(
            handle
                .select(VISITS + which, (Object[]) values)
                .map((row, context) -> rows.fact(row))
                .list());
    visits.sort(AS_RECEIVED);
    return Collections.unmodifiableList(visits);
  }

  private VisitFact fact(ResultSet row) throws SQLException {
    String text = row.getString(1);
    int number = text.indexOf(END) + 1;
    int received = text.indexOf(END, number) + 1;
    int shipped = text.indexOf(END, received) + 1;
    int customer = text.indexOf(END, shipped) + 1;
    int outcome = text.indexOf(END, customer) + 1;
    List<String> came =
        outcomes.computeIfAbsent(text.substring(outcome), all -> List.of(all.split(BETWEEN, -1)));
    return new VisitFact(
        text.substring(0, number - 1),
        Integer.parseInt(text, number, received - 1, 10),
        came.get(0),
        came.get(1),
        came.get(2),
        customers.computeIfAbsent(text.substring(customer, outcome - 1), c -> c),
        day(text.substring(received, shipped - 1)).orElseThrow(),
        came.get(3),
        came.get(4),
        came.get(5),
        came.get(6),
        came.get(7),
        !came.get(8).equals("0"),
        came.get(9),
        day(text.substring(shipped, customer - 1)));
  }

  private Optional<LocalDate> day(String text) {
    return days.computeIfAbsent(
        text, t -> t.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(t)));
  }

  private static String name(String column) {
    return "replace(" + column + ", '" + BETWEEN + "', ' ')";
  }
}
