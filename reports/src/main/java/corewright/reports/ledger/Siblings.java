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
  private static final String WORKED =
      "SELECT f.tag FROM fitted f JOIN shipment s ON s.tag = f.tag AND s.visit = f.visit WHERE ";
  private static final String TESTED =
      "SELECT r.tag FROM run r JOIN shipment s ON s.tag = r.tag AND s.visit = r.visit"
          + " WHERE r.purpose = 'ship' AND ";

  /** A slip of the hand or of a tool shows in the weeks around it. Common practice, no source. */
  private static final int AROUND_DAYS = 42;

  private Siblings() {}

  /**
   * Something that is shared.
   *
   * @param what as {@code lot LOT-7}
   * @param tags asks for the tags of all that share it and left, the unit's own among them
   */
  private record Shared(String what, String tags, List<Object> values) {}

  /** What is shared, as {@code lot LOT-7}, with the units that share it. */
  static Map<String, List<Found>> of(Handle handle, String tag) {
    Map<String, List<Found>> units = new LinkedHashMap<>();
    for (Shared shared : shared(handle, tag)) {
      units.put(
          shared.what,
          Finder.sharing(handle, tag, "u.tag IN (" + shared.tags + ")", shared.values));
    }
    return units;
  }

  /** The same counted, with the first of them: thousands are not read to say how many they are. */
  static List<Sharing> counted(Handle handle, String tag, int most) {
    List<Sharing> counted = new ArrayList<>();
    for (Shared shared : shared(handle, tag)) {
      List<Object> values = new ArrayList<>(shared.values);
      values.add(tag);
      values.add(most);
      List<Integer> count = new ArrayList<>();
      List<String> first =
          handle
              .select(
                  "WITH who AS MATERIALIZED (SELECT DISTINCT q.tag FROM ("
                      + shared.tags
                      + ") q WHERE q.tag <> ?) SELECT tag, (SELECT count(*) FROM who) AS n FROM"
                      + " who ORDER BY tag LIMIT ?",
                  values.toArray())
              .map(
                  (row, context) -> {
                    count.add(row.getInt("n"));
                    return row.getString("tag");
                  })
              .list();
      counted.add(new Sharing(shared.what, count.isEmpty() ? 0 : count.get(0), first));
    }
    return counted;
  }

  private static List<Shared> shared(Handle handle, String tag) {
    List<Shared> shared = new ArrayList<>();
    for (String lot :
        texts(handle, "SELECT DISTINCT lot FROM fitted WHERE tag = ? ORDER BY 1", tag)) {
      shared.add(new Shared("lot " + lot, WORKED + "f.lot = ?", List.of(lot)));
    }
    for (List<String> work : lastWork(handle, tag)) {
      LocalDate day = LocalDate.parse(work.get(1).substring(0, 10));
      LocalDate from = day.minusDays(AROUND_DAYS);
      LocalDate until = day.plusDays(AROUND_DAYS);
      shared.add(
          new Shared(
              "technician " + work.get(0) + ", " + from + " to " + until,
              WORKED + "f.who = ? AND f.at >= ? AND f.at < ?",
              List.of(work.get(0), from.toString(), until.plusDays(1).toString())));
    }
    for (List<String> run : lastFinalTests(handle, tag)) {
      String bench = run.get(0);
      LocalDate monday = monday(run.get(1));
      shared.add(
          new Shared(
              "bench " + bench + ", week " + monday + " to " + monday.plusDays(6),
              TESTED + "r.bench = ? AND r.started >= ? AND r.started < ?",
              List.of(bench, monday.toString(), monday.plusDays(7).toString())));
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
