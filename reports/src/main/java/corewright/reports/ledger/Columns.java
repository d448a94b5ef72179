package corewright.reports.ledger;

import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What a table is made of. */
final class Columns {
  private Columns() {}

  /** Names of a table's columns, in the order in which it holds them. */
  static List<String> of(Handle handle, String table) {
    return handle
        .createQuery("SELECT * FROM " + table + " WHERE 1 = 0")
        .scanResultSet(
            (results, context) -> {
              List<String> names = new ArrayList<>();
              var about = results.get().getMetaData();
              for (int i = 1; i <= about.getColumnCount(); i++) {
                names.add(about.getColumnName(i));
              }
              return names;
            });
  }
}
