package corewright.reports.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Reads visits to be counted, a million of them. A row comes as one text: asking it for eighteen
 * columns takes four times as long. What many rows have in common, their days, customers and
 * outcomes, is kept once.
 */
final class VisitRows {
  /** A control character; see {@link #outcome} for names that hold it all the same. */
  private static final String BETWEEN = "\u001f";

  private static final char END = BETWEEN.charAt(0);

  /** Written by the program itself, and different from visit to visit. */
  private static final List<String> OWN =
      List.of("tag", "number", "received", "shipped", "promised", "customer");

  /** What the visit came to, shared by many. */
  private static final List<String> OUTCOME =
      List.of(
          "family",
          "variant",
          "mode",
          "disposition",
          "arrival",
          "first_ship",
          "ship_bench",
          "technician",
          "sealed",
          "stage",
          "cold",
          "hot");

  private static final String VISITS =
      "SELECT concat_ws('"
          + BETWEEN
          + "', "
          + String.join(", ", OWN)
          + ", "
          + String.join(", ", OUTCOME)
          + ") FROM visit";

  /** Nearly the order in which they lie there, so it is quicker put right here than there. */
  private static final Comparator<VisitFact> AS_RECEIVED =
      Comparator.comparing(VisitFact::received)
          .thenComparing(VisitFact::tag)
          .thenComparingInt(VisitFact::visit);

  private final Handle handle;
  private final Map<String, Optional<LocalDate>> days = new HashMap<>();
  private final Map<String, String> customers = new HashMap<>();
  private final Map<String, List<String>> outcomes = new HashMap<>();
  private final ShopDays received;
  private final ShopDays shipped;

  private VisitRows(Handle handle, ZoneId zone) {
    this.handle = handle;
    received = new ShopDays(zone);
    shipped = new ShopDays(zone);
    handle
        .createQuery("SELECT code, name FROM customer")
        .map((row, context) -> customers.put(row.getString(1), row.getString(2)))
        .list();
  }

  /**
   * Reads them in the order of reception.
   *
   * @param zone where the shop stands, whose days are meant
   * @param which a condition on the visit; empty: all of them
   */
  static List<VisitFact> read(Handle handle, ZoneId zone, String which, String... values) {
    VisitRows rows = new VisitRows(handle, zone);
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
    int begun = text.indexOf(END, number) + 1;
    int left = text.indexOf(END, begun) + 1;
    int promised = text.indexOf(END, left) + 1;
    int customer = text.indexOf(END, promised) + 1;
    int outcome = text.indexOf(END, customer) + 1;
    String tag = text.substring(0, number - 1);
    int visit = Integer.parseInt(text, number, begun - 1, 10);
    List<String> came = outcome(text.substring(outcome), tag, visit);
    return new VisitFact(
        tag,
        visit,
        came.get(0),
        came.get(1),
        came.get(2),
        customers.computeIfAbsent(text.substring(customer, outcome - 1), c -> c),
        received.of(text.substring(begun, left - 1)),
        came.get(3),
        came.get(4),
        came.get(5),
        came.get(6),
        came.get(7),
        !came.get(8).equals("0"),
        came.get(9),
        left(text.substring(left, promised - 1)),
        came.get(10),
        came.get(11),
        day(text.substring(promised, customer - 1)));
  }

  /** A name that holds the separator makes too many cells; then they are asked for one by one. */
  private List<String> outcome(String text, String tag, int visit) {
    List<String> known = outcomes.get(text);
    if (known != null) {
      return known;
    }
    List<String> cells = List.of(text.split(BETWEEN, -1));
    if (cells.size() != OUTCOME.size()) {
      return cells(tag, visit); // another one's could read alike, so it is not kept
    }
    outcomes.put(text, cells);
    return cells;
  }

  private List<String> cells(String tag, int visit) {
    return handle
        .select(
            "SELECT " + String.join(", ", OUTCOME) + " FROM visit WHERE tag = ? AND number = ?",
            tag,
            visit)
        .map(
            (row, context) -> {
              List<String> cells = new ArrayList<>();
              for (String column : OUTCOME) {
                cells.add(row.getString(column));
              }
              return cells;
            })
        .one();
  }

  private Optional<LocalDate> left(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(shipped.of(text));
  }

  private Optional<LocalDate> day(String text) {
    return days.computeIfAbsent(
        text, t -> t.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(t)));
  }
}
