package corewright.reports.ledger;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** A column of a table that is taken out: what it is called and what it holds. */
record Column(String name, Kind kind) {

  /** What can be in it. */
  enum Kind {
    TEXT,
    WHOLE,
    REAL
  }

  /** Columns of a table, in the order in which it holds them. */
  static List<Column> of(Handle handle, String table) {
    return handle
        .createQuery("SELECT * FROM " + table + " WHERE 1 = 0")
        .scanResultSet(
            (results, context) -> {
              List<Column> columns = new ArrayList<>();
              ResultSetMetaData about = results.get().getMetaData();
              for (int i = 1; i <= about.getColumnCount(); i++) {
                columns.add(new Column(about.getColumnName(i), kind(about.getColumnType(i))));
              }
              return columns;
            });
  }

  /** A row as texts, {@link Long}s and {@link Double}s. */
  static List<@Nullable Object> cells(List<Column> columns, ResultSet row) throws SQLException {
    List<@Nullable Object> cells = new ArrayList<>();
    for (int i = 1; i <= columns.size(); i++) {
      Object cell =
          switch (columns.get(i - 1).kind()) {
            case TEXT -> row.getString(i);
            case WHOLE -> row.getLong(i);
            case REAL -> row.getDouble(i);
          };
      cells.add(row.wasNull() ? null : cell);
    }
    return cells;
  }

  private static Kind kind(int type) {
    return switch (type) {
      case Types.BIGINT, Types.INTEGER -> Kind.WHOLE;
      case Types.DOUBLE, Types.REAL, Types.FLOAT -> Kind.REAL;
      default -> Kind.TEXT;
    };
  }
}
