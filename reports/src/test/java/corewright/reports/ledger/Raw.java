package corewright.reports.ledger;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Jdbi;

/** The ledger's file opened behind the ledger's back, as someone who wants to change it would. */
record Raw(Path file) {

  void execute(String sql) {
    jdbi().useHandle(handle -> handle.execute(sql));
  }

  /** As {@link #execute}, after the triggers that guard the events have been taken away. */
  void tamper(String sql) {
    jdbi()
        .useHandle(
            handle -> {
              handle
                  .select("SELECT name FROM sqlite_master WHERE type = 'trigger'")
                  .mapTo(String.class)
                  .list()
                  .forEach(trigger -> handle.execute("DROP TRIGGER " + trigger));
              handle.execute("PRAGMA foreign_keys = OFF");
              for (String statement : sql.split(";")) {
                handle.execute(statement);
              }
            });
  }

  /** Every row of every table that is computed from the events. */
  List<String> views() {
    List<String> rows = new ArrayList<>();
    jdbi()
        .useHandle(
            handle ->
                Views.TABLES.forEach(
                    table ->
                        handle
                            .select("SELECT * FROM " + table + " ORDER BY 1, 2")
                            .mapToMap()
                            .forEach(row -> rows.add(table + " " + row))));
    return rows;
  }

  private Jdbi jdbi() {
    return Jdbi.create("jdbc:sqlite:" + file);
  }
}
