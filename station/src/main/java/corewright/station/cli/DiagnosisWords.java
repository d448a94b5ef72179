package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.measures.Chance;
import java.util.ArrayList;
import java.util.List;

/** Which groups of parts the readings point at, as lines and as JSON. */
final class DiagnosisWords {
  private static final int MOST = 3;

  private DiagnosisWords() {}

  static List<String> lines(Diagnosis diagnosis) {
    List<String> lines = new ArrayList<>();
    if (diagnosis.candidates().isEmpty()) {
      diagnosis.excluded().forEach(why -> lines.add("Fault group: none suspected. " + why));
      return lines;
    }
    lines.add(
        diagnosis.named().isPresent()
            ? "Fault group, as far as a test from outside can say:"
            : "Fault group not determined; the likeliest:");
    diagnosis.candidates().stream()
        .filter(c -> Chance.isWorthTelling(c.probability()))
        .forEach(c -> lines.addAll(candidate(c)));
    diagnosis.excluded().forEach(why -> lines.add("  looked at first: " + why));
    return lines;
  }

  private static List<String> candidate(Candidate c) {
    List<String> lines = new ArrayList<>();
    lines.add("  " + Chance.words(c.probability()) + "  " + c.words());
    c.evidenceFor().stream().limit(MOST).forEach(e -> lines.add("        for: " + e));
    c.evidenceAgainst().stream().limit(MOST).forEach(e -> lines.add("        against: " + e));
    lines.add("        next: " + c.next());
    return lines;
  }

  static ObjectNode json(Diagnosis diagnosis) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("determined", diagnosis.determined());
    ArrayNode candidates = json.putArray("candidates");
    diagnosis.candidates().forEach(c -> candidates.add(json(c)));
    ArrayNode excluded = json.putArray("excluded");
    diagnosis.excluded().forEach(excluded::add);
    return json;
  }

  private static ObjectNode json(Candidate c) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("group", c.group());
    json.put("words", c.words());
    json.put("probability", c.probability());
    ArrayNode evidenceFor = json.putArray("for");
    c.evidenceFor().forEach(evidenceFor::add);
    ArrayNode against = json.putArray("against");
    c.evidenceAgainst().forEach(against::add);
    json.put("next", c.next());
    return json;
  }
}
