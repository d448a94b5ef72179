package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/**
 * A file that the record names by its hash: a capture, a photograph or file of a unit, a document.
 *
 * @param tag of the unit it is about
 * @param path in the shop's folder
 * @param sha256 of its bytes as the record holds it, lower-case hex; empty where it holds none
 */
public record KeptFile(String tag, String path, String sha256) {

  /**
   * Those of the visits for a customer, from the events; what was written again counts as it was
   * last.
   *
   * @param customer code of the customer; empty: of everybody
   */
  static List<KeptFile> of(Handle handle, String customer) {
    Map<String, KeptFile> files = new LinkedHashMap<>();
    Set<String> theirs = new HashSet<>();
    handle
        .createQuery(
            "SELECT tag, kind, body FROM event WHERE kind IN ('received', 'brought from old"
                + " books', 'run ended', 'attached', 'documented') ORDER BY position")
        .map(
            (row, context) ->
                List.of(row.getString("tag"), row.getString("kind"), row.getString("body")))
        .useStream(all -> all.forEach(e -> see(e, customer, theirs, files)));
    return List.copyOf(files.values());
  }

  /** A visit begins with whose it is, and what follows is theirs. */
  private static void see(
      List<String> event, String customer, Set<String> theirs, Map<String, KeptFile> files) {
    String tag = event.get(0);
    JsonNode body = Json.read(event.get(2));
    if (EventKind.beginsAVisit(event.get(1))) {
      if (customer.isEmpty() || body.path("customer").asText().equals(customer)) {
        theirs.add(tag);
      } else {
        theirs.remove(tag);
      }
    } else if (theirs.contains(tag)) {
      KeptFile file = named(tag, event.get(1), body);
      if (!file.path.isEmpty()) {
        files.put(file.path, file);
      }
    }
  }

  private static KeptFile named(String tag, String kind, JsonNode body) {
    String sha256 = body.path("sha256").asText();
    return switch (EventKind.of(kind)) {
      case ATTACHED -> new KeptFile(tag, "files/" + sha256, sha256);
      case DOCUMENTED -> new KeptFile(tag, document(body.path("path").asText()), sha256);
      default ->
          new KeptFile(tag, body.path("capture").asText(), body.path("captureSha256").asText());
    };
  }

  /** Where a document lies, whatever folder the shop had when it was written. */
  static String document(String path) {
    return "documents/" + path.replaceAll(".*[/\\\\]", "");
  }
}
