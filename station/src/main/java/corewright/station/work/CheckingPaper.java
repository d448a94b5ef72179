package corewright.station.work;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.reports.document.genuine.Genuine;
import corewright.reports.document.genuine.PdfCheck;
import corewright.reports.ledger.Json;
import corewright.reports.ledger.KeyFolder;
import corewright.reports.ledger.PublicKeys;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Checks a document that somebody brings: against its signature, and against the record. */
public final class CheckingPaper {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final int MOST = 10;

  private CheckingPaper() {}

  /**
   * Checks a document without the record of the shop.
   *
   * @param key a file with the shop's public key, from elsewhere; empty: the document's own
   */
  public static Genuine check(Path pdf, Optional<Path> key) {
    Optional<PublicKey> trusted = key.map(PublicKeys::read);
    try {
      return PdfCheck.check(Files.readAllBytes(pdf), trusted);
    } catch (IOException e) {
      throw new UncheckedIOException("The document " + pdf + " cannot be read", e);
    }
  }

  /** The public key of a shop that is at hand. */
  public static Path keyOf(Folders shop) {
    return new KeyFolder(shop.root()).publicFile();
  }

  /**
   * Where the record inside a document says something else than the ledger about the same runs,
   * each a sentence; empty where it says the same.
   */
  public static List<String> against(Workshop workshop, String record) {
    JsonNode document = read(record).path("dossier");
    String tag = document.path("core").path("tag").asText();
    int visit = document.path("visit").asInt();
    JsonNode ledger = read(Json.text(workshop.ledger().dossier(tag, visit)));
    List<String> differences = new ArrayList<>();
    compare("core", document.path("core"), ledger.path("core"), differences);
    for (JsonNode run : document.path("runs")) {
      String id = run.path("id").asText();
      Optional<JsonNode> kept = run(ledger.path("runs"), id);
      if (kept.isEmpty()) {
        differences.add("The ledger has no run " + id + " of unit " + tag + ".");
      } else {
        compare("run " + id, run, kept.get(), differences);
      }
    }
    return differences.subList(0, Math.min(MOST, differences.size()));
  }

  private static Optional<JsonNode> run(JsonNode runs, String id) {
    for (JsonNode run : runs) {
      if (run.path("id").asText().equals(id)) {
        return Optional.of(run);
      }
    }
    return Optional.empty();
  }

  private static void compare(
      String where, JsonNode document, JsonNode ledger, List<String> differences) {
    if (document.equals(ledger)) {
      return;
    }
    if (document.isObject() && ledger.isObject()) {
      TreeSet<String> names = new TreeSet<>();
      document.fieldNames().forEachRemaining(names::add);
      ledger.fieldNames().forEachRemaining(names::add);
      names.forEach(n -> compare(where + ", " + n, document.path(n), ledger.path(n), differences));
    } else if (document.isArray() && ledger.isArray() && document.size() == ledger.size()) {
      Iterator<JsonNode> other = ledger.iterator();
      int i = 1;
      for (JsonNode item : document) {
        compare(where + " " + i++, item, other.next(), differences);
      }
    } else {
      differences.add(
          "At " + where + " the document says " + document + ", the ledger " + ledger + ".");
    }
  }

  private static JsonNode read(String json) {
    try {
      return MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new Refused(
          "The record inside the document cannot be read: " + e.getOriginalMessage(),
          "Ask the shop for the document again.");
    }
  }
}
