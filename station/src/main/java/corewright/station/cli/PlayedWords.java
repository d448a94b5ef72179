package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.wire.Said;
import java.util.List;

/** What a dialect said while it was played, and what came of it. */
final class PlayedWords {
  private static final int WIDE = 44;

  private PlayedWords() {}

  static String line(Said said) {
    String sent = said.sent().isEmpty() ? "-" : said.sent();
    return (said.good() ? "  ok  " : "  NO  ")
        + sent
        + " ".repeat(Math.max(2, WIDE - sent.length()))
        + said.came();
  }

  static void put(ObjectNode json, List<Said> all) {
    if (all.isEmpty()) {
      return;
    }
    ArrayNode played = json.putArray("played");
    for (Said said : all) {
      played
          .addObject()
          .put("where", said.pointer())
          .put("sent", said.sent())
          .put("came", said.came())
          .put("good", said.good());
    }
  }
}
