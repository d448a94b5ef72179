package corewright.reports.ledger;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/**
 * Who else is at risk when a unit comes back: units that left and share a lot, a technician in the
 * weeks around the work, or the bench and the week of the final test.
 */
final class Siblings {
  private static final String WORKER =
      "u.tag IN (SELECT f.tag FROM fitted f JOIN shipment s ON s.tag = f.tag AND s.visit = f.visit"
          + " WHERE ";
  private static final String TESTED =
      "u.tag IN (SELECT r.tag FROM run r JOIN shipment s ON s.tag = r.tag AND s.visit = r.visit"
          + " WHERE r.purpose = 'ship' AND ";

  /** A slip of the hand or of a tool shows in the weeks around it. Common practice, no source. */
  private static final int AROUND_DAYS = 42;

  private Siblings() {}

  /** What is shared, as {@code lot LOT-7}, with the units that share it. */
  static Map<String, List<Found>> of(Handle handle, String tag) {
    Map<String, List<Found>> shared = new LinkedHashMap<>();
    for (String lot :
        texts(handle, "SELECT DISTINCT lot FROM fitted WHERE tag = ? ORDER BY 1", tag)) {
      shared.put("lot " + lot, Finder.sharing(handle, tag, WORKER + "f.lot = ?)", lot));
    }
    for (List<String> work : lastWork(handle, tag)) {
      LocalDate day = LocalDate.parse(work.get(1).substring(0, 10));
      LocalDate from = day.minusDays(AROUND_DAYS);
      LocalDate until = day.plusDays(AROUND_DAYS);
      shared.put(
          "technician " + work.get(0) + ", " + from + " to " + until,
          Finder.sharing(
              handle,
              tag,
              WORKER + "f.who = ? AND f.at >= ? AND f.at < ?)",
              work.get(0),
              from.toString(),
              until.plusDays(1).toString()));
    }
    for (List<String> run : lastFinalTests(handle, tag)) {
      String bench = run.get(0);
      LocalDate monday = monday(run.get(1));
      String week = monday + " to " + monday.plusDays(6);
      shared.put(
          "bench " + bench + ", week " + week,
          Finder.sharing(
              handle,
              tag,
              TESTED + "r.bench = ? AND r.started >= ? AND r.started < ?)",
              bench,
              monday.toString(),
              monday.plusDays(7).toString()));
    }
    return shared;
  }

  /** Who fitted something last, and when. */
  private static List<List<String>> lastWork(Handle handle, String tag) {
    return handle
        .select("SELECT who, max(at) AS at FROM fitted WHERE tag = ? GROUP BY who ORDER BY 1", tag)
        .map((row, context) -> List.of(row.getString("who"), row.getString("at")))
        .list();
  }

  private static List<List<String>> lastFinalTests(Handle handle, String tag) {
    List<List<String>> last = new ArrayList<>();
    handle
        .select(
            "SELECT bench, started FROM run WHERE tag = ? AND purpose = 'ship' ORDER BY started"
                + " DESC",
            tag)
        .map((row, context) -> List.of(row.getString("bench"), row.getString("started")))
        .findFirst()
        .ifPresent(last::add);
    return last;
  }

  private static LocalDate monday(String started) {
    LocalDate day = LocalDate.parse(started.substring(0, 10));
    return day.minus(day.getDayOfWeek().getValue() - 1L, ChronoUnit.DAYS);
  }

  private static List<String> texts(Handle handle, String sql, String tag) {
    return handle.select(sql, tag).mapTo(String.class).list();
  }
}
