package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * The whole texts of profiles, families and benches, stored once: in a run's event each stands as
 * the hash of the text, which the chain then protects as if it were the text.
 */
final class Contents {
  private static final List<String> HOLDERS = List.of("profile", "family", "benchDescription");

  private Contents() {}

  /** Takes the texts out of a run and stores those that are new. */
  static void lift(Handle handle, ObjectNode run) {
    for (String holder : HOLDERS) {
      if (run.get(holder) instanceof ObjectNode origin) {
        String text = origin.get("text").asText();
        String key = Hashes.of(text);
        handle.execute(
            "INSERT INTO content (sha256, body) VALUES (?, ?) ON CONFLICT (sha256) DO NOTHING",
            key,
            text);
        origin.put("text", key);
      }
    }
  }

  /** What the texts of a stored run hash to. */
  static List<String> keys(JsonNode run) {
    return HOLDERS.stream()
        .map(holder -> run.path(holder).path("text").asText())
        .filter(key -> !key.isEmpty())
        .toList();
  }

  /** Puts the texts back. */
  static void restore(Handle handle, JsonNode run) {
    for (String holder : HOLDERS) {
      if (run.get(holder) instanceof ObjectNode origin) {
        origin.put("text", get(handle, origin.get("text").asText()));
      }
    }
  }

  private static String get(Handle handle, String key) {
    return handle
        .createQuery("SELECT body FROM content WHERE sha256 = :key")
        .bind("key", key)
        .mapTo(String.class)
        .findOne()
        .orElseThrow(
            () ->
                new LedgerFault(
                    "The text " + key + ", which a run was held against, is missing",
                    "Restore the last backup beside this ledger and compare"));
  }
}
