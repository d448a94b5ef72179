package corewright.reports.ledger;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * The ledger's database opened behind the ledger's back, as someone who wants to change it would.
 */
record Raw(String url) {

  Raw(Path file) {
    this(Urls.of(file));
  }

  void execute(String sql) {
    jdbi().useHandle(handle -> handle.execute(sql));
  }

  /** As {@link #execute}, after what guards the events has been taken away. */
  void tamper(String sql) {
    jdbi()
        .useHandle(
            handle -> {
              kept().unguard(handle);
              for (String statement : sql.split(";")) {
                handle.execute(statement);
              }
            });
  }

  int lengthOf(String column, int sequence) {
    return jdbi()
        .withHandle(
            handle ->
                handle
                    .select("SELECT length(" + column + ") FROM event WHERE sequence = ?", sequence)
                    .mapTo(Integer.class)
                    .one());
  }

  /** Changes bodies from one event on and makes the chain of hashes fit again, without a key. */
  void rewriteFrom(int sequence, UnaryOperator<String> change) {
    rewrite(event -> event.sequence() < sequence ? event.body() : change.apply(event.body()), "");
  }

  /** Signs every event with another key, and says so wherever the ledger names its key. */
  void signAnew(SigningKey key) {
    rewrite(Event::body, key.id());
    jdbi()
        .useHandle(
            handle -> {
              kept().unguard(handle);
              for (Event event : all(handle)) {
                handle.execute(
                    "UPDATE event SET signature = ? WHERE sequence = ?",
                    key.sign(event.hash()),
                    event.sequence());
              }
              handle.execute("DELETE FROM signer");
              Signers.register(handle, key, "2026-11-26");
            });
  }

  private void rewrite(Function<Event, String> body, String keyId) {
    jdbi()
        .useHandle(
            handle -> {
              kept().unguard(handle);
              String previous = Hashes.NOTHING;
              for (Event e : all(handle)) {
                String text = body.apply(e);
                String hash =
                    Hashes.of(
                        e.chain(),
                        e.sequence(),
                        e.at(),
                        e.who(),
                        e.kind(),
                        e.tag(),
                        text,
                        previous);
                handle.execute(
                    "UPDATE event SET body = ?, previous = ?, hash = ?, key_id = ? WHERE sequence ="
                        + " ?",
                    text,
                    previous,
                    hash,
                    keyId.isEmpty() ? e.keyId() : keyId,
                    e.sequence());
                previous = hash;
              }
              handle.execute("UPDATE chain SET hash = ?", previous);
            });
  }

  private static List<Event> all(Handle handle) {
    return handle
        .createQuery("SELECT * FROM event ORDER BY sequence")
        .map((row, context) -> Events.event(row))
        .list();
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
    return Jdbi.create(url);
  }

  private Kept kept() {
    return url.startsWith(Urls.SQLITE) ? Kept.SQLITE : Kept.POSTGRESQL;
  }
}
