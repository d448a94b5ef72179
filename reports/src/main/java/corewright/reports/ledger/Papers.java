package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Dossier;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;

/** What was handed out about units, and what it was made from: a copy years later says the same. */
public final class Papers {
  private static final String MADE_WITH = "made";

  private final Database database;
  private final Appender appender;

  Papers(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * A document as it was given out.
   *
   * @param at when the ledger was told of it
   * @param made what it was made with besides the record, as the shop's name; empty for one that
   *     was made before this was kept
   * @param dossier what the record said then
   * @param head where the chain that told of it ended then
   */
  public record Given(Instant at, Map<String, String> made, Dossier dossier, Head head) {
    public Given {
      made = Map.copyOf(made);
    }
  }

  /**
   * A document was made.
   *
   * @param kind as {@code test report}
   * @param sha256 of its bytes, lower-case hex
   * @param made what it was made with besides the record
   */
  public void add(
      String tag, String kind, Path file, String sha256, Map<String, String> made, String who) {
    JsonNode body =
        Json.tree(Map.of("kind", kind, "path", file.toString(), "sha256", sha256, MADE_WITH, made));
    database.write(handle -> appender.append(handle, who, EventKind.DOCUMENTED, tag, body));
  }

  /**
   * The first document of a kind about a visit that was made since a moment, as its last run; empty
   * if there is none.
   */
  public Optional<Given> first(String tag, int visit, String kind, Instant since) {
    return database.read(handle -> first(handle, Tags.read(tag), visit, kind, since));
  }

  private static Optional<Given> first(
      Handle handle, String tag, int visit, String kind, Instant since) {
    List<Event> events = Events.of(handle, tag);
    int visits = 0;
    for (int i = 0; i < events.size(); i++) {
      Event event = events.get(i);
      visits += EventKind.beginsAVisit(event.kind()) ? 1 : 0;
      if (visits == visit && is(event, kind) && !Instant.parse(event.at()).isBefore(since)) {
        return Dossiers.tell(handle, events.subList(0, i), visit)
            .map(dossier -> given(event, dossier));
      }
    }
    return Optional.empty();
  }

  private static boolean is(Event event, String kind) {
    return event.kind().equals(EventKind.DOCUMENTED.id())
        && Json.read(event.body()).path("kind").asText().equals(kind);
  }

  private static Given given(Event event, Dossier dossier) {
    Map<String, String> made = new TreeMap<>();
    if (Json.read(event.body()).path(MADE_WITH) instanceof ObjectNode with) {
      with.properties().forEach(field -> made.put(field.getKey(), field.getValue().asText()));
    }
    Head head = new Head(event.chain(), event.sequence() - 1, event.previous());
    return new Given(Instant.parse(event.at()), made, dossier, head);
  }

  /**
   * Where the chain ends that holds the newest event of a unit: whoever keeps it can show that none
   * of its events was taken away. Empty before the first.
   */
  public Optional<Head> head(String tag) {
    return database.read(
        handle ->
            handle
                .createQuery(
                    "SELECT name, sequence, hash FROM chain WHERE name ="
                        + " (SELECT chain FROM event WHERE tag = :tag"
                        + " ORDER BY position DESC LIMIT 1)")
                .bind("tag", Tags.read(tag))
                .map(
                    (row, context) ->
                        new Head(
                            row.getString("name"), row.getLong("sequence"), row.getString("hash")))
                .findOne());
  }
}
