package corewright.reports.ledger;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/** What was printed about units: which document, when, and what its bytes hash to. */
public final class Papers {
  private final Database database;
  private final Appender appender;

  Papers(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * A document was made.
   *
   * @param kind as {@code test report}
   * @param sha256 of its bytes, lower-case hex
   */
  public void documented(String tag, String kind, Path file, String sha256, String who) {
    Map<String, String> body = Map.of("kind", kind, "path", file.toString(), "sha256", sha256);
    database.write(
        handle -> appender.append(handle, who, EventKind.DOCUMENTED, tag, Json.tree(body)));
  }

  /**
   * When a kind of document was first made about a unit since a moment, as its last run; empty if
   * it was not.
   */
  public Optional<Instant> firstDocumented(String tag, String kind, Instant since) {
    return database.read(
        handle ->
            handle
                .select("SELECT at FROM document WHERE tag = ? AND kind = ?", Tags.read(tag), kind)
                .mapTo(String.class)
                .map(Instant::parse)
                .stream()
                .filter(at -> !at.isBefore(since))
                .min(Comparator.naturalOrder()));
  }
}
