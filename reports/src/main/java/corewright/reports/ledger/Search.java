package corewright.reports.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Finds units by what people have in their hands: a tag, a serial, or a readable part of one. */
final class Search {
  private static final int MOST = 50;

  /** Sorts after every letter and digit. */
  private static final String LAST = "\uFFFF";

  private Search() {}

  static List<Found> find(Handle handle, String text) {
    Map<String, Found> found = new LinkedHashMap<>();
    String tag = text.strip().toUpperCase(Locale.ROOT);
    String key = Serials.key(text);
    if (!key.isEmpty()) {
      ask(handle, found, "tag", "tag = ?", tag);
      ask(handle, found, "serial", "serial_key = ?", key);
      boolean exact = !found.isEmpty();
      ask(handle, found, "beginning of the tag", "tag >= ? AND tag < ?", tag, tag + LAST);
      ask(
          handle,
          found,
          "part of the serial",
          "tag IN (SELECT tag FROM serial_tail WHERE tail >= ? AND tail < ? ORDER BY tail LIMIT "
              + MOST
              + ")",
          key,
          key + LAST);
      if (!exact) { // a slip may as well look like the beginning of a longer tag
        Mistyped.candidates(text)
            .forEach(candidate -> ask(handle, found, Found.MISTYPED, "tag = ?", candidate));
      }
    }
    return List.copyOf(found.values());
  }

  static Found found(ResultSet row, String why) throws SQLException {
    return new Found(
        row.getString("tag"),
        row.getString("serial"),
        row.getString("family"),
        row.getString("label"),
        row.getInt("visits"),
        why);
  }

  private static void ask(
      Handle handle, Map<String, Found> found, String why, String condition, Object... values) {
    if (found.size() >= MOST && !why.equals(Found.MISTYPED)) {
      return;
    }
    handle
        .select(
            "SELECT tag, serial, family, label, visits FROM unit WHERE "
                + condition
                + " ORDER BY tag LIMIT "
                + MOST,
            values)
        .map((row, context) -> found(row, why))
        .forEach(unit -> found.putIfAbsent(unit.tag(), unit));
  }
}
