package corewright.reports.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Finds units by several properties at once, and the siblings of one. */
final class Finder {
  private static final String UNIT = "SELECT DISTINCT u.* FROM unit u";

  private final Handle handle;
  private final List<String> conditions = new ArrayList<>();
  private final List<Object> values = new ArrayList<>();

  /** Why each unit was found that a text was looked for in. */
  private final Map<String, String> reasons = new LinkedHashMap<>();

  private Finder(Handle handle) {
    this.handle = handle;
  }

  static List<Found> find(Handle handle, corewright.reports.ledger.Query query) {
    Finder finder = new Finder(handle);
    finder.where("u.tag IN (SELECT tag FROM fitted WHERE lot = ?)", query.lot().map(Tags::read));
    query
        .person()
        .ifPresent(
            who -> {
              finder.conditions.add(
                  "(u.tag IN (SELECT tag FROM run WHERE operator = ?) OR u.tag IN (SELECT tag FROM"
                      + " fitted WHERE who = ?) OR u.tag IN (SELECT tag FROM visit WHERE"
                      + " received_by = ?))");
              finder.values.addAll(List.of(who, who, who));
            });
    finder.where("u.tag IN (SELECT tag FROM run WHERE bench = ?)", query.bench());
    finder.where("u.tag IN (SELECT tag FROM run WHERE fixture = ?)", query.fixture());
    finder.where("u.tag IN (SELECT tag FROM life WHERE stage = ?)", query.stage());
    finder.where("u.tag IN (SELECT tag FROM run WHERE verdict = ?)", query.verdict());
    finder.between(query.from(), query.until());
    query.text().ifPresent(finder::among);
    return finder.ask("properties");
  }

  /**
   * Units that left and share something with the last rebuild of a unit, by what they share.
   *
   * @param condition that holds for the others, and that they have left
   */
  static List<Found> sharing(Handle handle, String tag, String condition, List<Object> values) {
    Finder finder = new Finder(handle);
    finder.conditions.add("u.tag <> ?");
    finder.values.add(tag);
    finder.conditions.add(condition);
    finder.values.addAll(values);
    return finder.ask("sibling");
  }

  private void where(String condition, Optional<String> value) {
    value.ifPresent(
        v -> {
          conditions.add(condition);
          values.add(v);
        });
  }

  /** Times are text that sorts as time does; a day ends before the next one begins. */
  private void between(Optional<String> from, Optional<String> until) {
    if (from.isEmpty() && until.isEmpty()) {
      return;
    }
    String first = from.orElse("");
    String last = until.map(day -> day + "~").orElse("~");
    conditions.add(
        "(u.tag IN (SELECT tag FROM visit WHERE received >= ? AND received <= ?) OR u.tag IN"
            + " (SELECT tag FROM run WHERE started >= ? AND started <= ?))");
    values.addAll(List.of(first, last, first, last));
  }

  private void among(String text) {
    Search.find(handle, text).forEach(found -> reasons.put(found.tag(), found.why()));
    Set<String> tags = reasons.keySet();
    conditions.add(
        tags.isEmpty()
            ? "1 = 0"
            : "u.tag IN (" + tags.stream().map(t -> "?").collect(Collectors.joining(", ")) + ")");
    values.addAll(tags);
  }

  private List<Found> ask(String why) {
    String where = conditions.isEmpty() ? "" : " WHERE " + String.join(" AND ", conditions);
    Query query = handle.createQuery(UNIT + where + " ORDER BY u.tag");
    for (int i = 0; i < values.size(); i++) {
      query.bind(i, values.get(i));
    }
    return query
        .map((row, context) -> Search.found(row, reasons.getOrDefault(row.getString("tag"), why)))
        .list();
  }
}
