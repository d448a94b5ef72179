package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.reports.document.genuine.Genuine;
import corewright.reports.ledger.PublicKeys;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What a document was found to be, for people and for scripts. */
record GenuineWords(Path file, Genuine found, boolean trusted, List<String> differences) {

  boolean good() {
    return found.whole() && differences.isEmpty();
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        found.whole()
            ? "Whole: every byte is as it was signed."
            : "NOT AS IT WAS SIGNED: " + found.faults().get(0));
    found.faults().stream().skip(1).forEach(fault -> lines.add("  " + fault));
    found
        .key()
        .ifPresent(
            key ->
                lines.add(
                    "Signed with key "
                        + PublicKeys.id(key)
                        + ", which names itself "
                        + found.holder()
                        + "."));
    if (!found.code().isEmpty()) {
      lines.add(
          "Code of its record: " + found.code() + ". Compare it with the code on its first page.");
    }
    differences.forEach(lines::add);
    if (found.key().isEmpty()) {
      lines.add("No key is in it: a specimen of an emulated run, for one, is never signed.");
    } else if (!trusted) {
      lines.add(
          "Whose key that is nobody has said. Give --key with the shop's public key to be sure.");
    }
    if (!good()) {
      lines.add("Do not rely on it; ask the shop for the document again.");
    }
    return lines;
  }

  ObjectNode json() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("document", file.toString());
    json.put("whole", found.whole());
    json.put("key", found.key().map(PublicKeys::id).orElse(null));
    json.put("holder", found.holder());
    json.put("keyFromOutside", trusted);
    json.put("code", found.code());
    found.faults().forEach(json.putArray("faults")::add);
    differences.forEach(json.putArray("differencesFromLedger")::add);
    return json;
  }
}
