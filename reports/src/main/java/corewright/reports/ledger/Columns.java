package corewright.reports.ledger;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** What a table is made of. */
final class Columns {
  private Columns() {}

  /** Names of a table's columns, in the order in which it holds them. */
  static List<String> of(Handle handle, String table) {
    return Column.of(handle, table).stream().map(Column::name).toList();
  }
}
