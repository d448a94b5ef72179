package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/**
 * A file that the record names by its hash: a capture, a photograph or file of a unit, a document.
 *
 * @param tag of the unit it is about
 * @param path in the shop's folder
 * @param sha256 of its bytes as the record holds it, lower-case hex
 */
public record KeptFile(String tag, String path, String sha256) {

  /** Every one, in the order of the events; what was written again counts as it was last. */
  static List<KeptFile> of(Handle handle) {
    Map<String, KeptFile> files = new LinkedHashMap<>();
    handle
        .createQuery(
            "SELECT tag, kind, body FROM event WHERE kind IN ('run ended', 'attached',"
                + " 'documented') ORDER BY position")
        .map(
            (row, context) ->
                named(
                    row.getString("tag"), row.getString("kind"), Json.read(row.getString("body"))))
        .useStream(
            all ->
                all.filter(file -> !file.sha256.isEmpty())
                    .forEach(file -> files.put(file.path, file)));
    return List.copyOf(files.values());
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
