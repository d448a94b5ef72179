package corewright.reports.document;

import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.chart.Type;
import corewright.reports.chart.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What the type has no letter for, field by field: said before anything is printed. On paper such a
 * character stands as a question mark, never as an empty box.
 */
final class Lacking {
  private static final int MOST_NAMED = 5;

  private Lacking() {}

  /** Each field with such characters, a sentence with what to do; usually none. */
  static List<String> of(Shop shop, Dossier dossier, Words words) {
    List<String> sentences = new ArrayList<>();
    fields(shop, dossier)
        .forEach(
            (field, text) -> {
              String characters = characters(text);
              if (!characters.isEmpty()) {
                sentences.add(words.get("lacking", characters, words.get("lacking." + field)));
              }
            });
    return sentences;
  }

  private static Map<String, String> fields(Shop shop, Dossier dossier) {
    Core core = dossier.core();
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("customer", core.customer());
    fields.put("label", core.label() + core.serial());
    fields.put("complaint", core.complaint());
    fields.put(
        "people",
        core.receivedBy()
            + dossier.decision().map(Decision::owner).orElse("")
            + dossier.runs().stream().map(RunRecord::operator).collect(Collectors.joining()));
    fields.put("decision", dossier.decision().map(Lacking::words).orElse(""));
    fields.put("rebuild", String.join("", dossier.rebuild()));
    fields.put(
        "shop",
        shop.name() + shop.address() + shop.contact() + shop.complaints() + shop.warrantyTerms());
    return fields;
  }

  private static String words(Decision decision) {
    return decision.sentence() + decision.question() + String.join("", decision.reasons());
  }

  private static String characters(String text) {
    int[] lacking = new Clean(Type::canPrint).lacking(text);
    List<String> named = new ArrayList<>();
    for (int i = 0; i < Math.min(MOST_NAMED, lacking.length); i++) {
      named.add(String.format("%s (U+%04X)", Character.toString(lacking[i]), lacking[i]));
    }
    return String.join(", ", named) + (lacking.length > MOST_NAMED ? ", …" : "");
  }
}
