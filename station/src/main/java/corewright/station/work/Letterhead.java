package corewright.station.work;

import corewright.reports.document.Colour;
import corewright.reports.document.Given;
import corewright.reports.document.Shop;
import corewright.reports.document.template.Templates;
import corewright.reports.ledger.Head;
import corewright.reports.ledger.Papers;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a document was made with besides the record, as the ledger keeps it. */
final class Letterhead {
  private static final String TEMPLATE = "template ";

  private Letterhead() {}

  static Map<String, String> kept(Given given) {
    Shop shop = given.shop();
    Map<String, String> kept = new TreeMap<>();
    kept.put("at", given.at().toString());
    kept.put("zone", given.zone().getId());
    kept.put("head", given.head());
    kept.put("name", shop.name());
    kept.put("address", shop.address());
    kept.put("contact", shop.contact());
    kept.put("complaints", shop.complaints());
    kept.put("warrantyMonths", String.valueOf(shop.warranty_months()));
    kept.put("warrantyTerms", shop.warrantyTerms());
    kept.put("colour", shop.colour().toString());
    kept.put("region", shop.region().toLanguageTag());
    given.templates().texts().forEach((kind, text) -> kept.put(TEMPLATE + kind, text));
    return kept;
  }

  /**
   * The same again.
   *
   * @param now stands in for what was not kept in a ledger of before
   */
  static Given of(Papers.Given first, Given now) {
    Map<String, String> kept = first.made();
    Shop shop = now.shop();
    return new Given(
        Optional.ofNullable(kept.get("at")).map(Instant::parse).orElse(first.at()),
        Optional.ofNullable(kept.get("zone")).map(ZoneId::of).orElse(now.zone()),
        kept.getOrDefault("head", printed(first.head())),
        new Shop(
            kept.getOrDefault("name", shop.name()),
            kept.getOrDefault("address", shop.address()),
            kept.getOrDefault("contact", shop.contact()),
            kept.getOrDefault("complaints", shop.complaints()),
            Optional.ofNullable(kept.get("warrantyMonths"))
                .map(Integer::parseInt)
                .orElse(shop.warranty_months()),
            kept.getOrDefault("warrantyTerms", shop.warrantyTerms()),
            Optional.ofNullable(kept.get("region"))
                .map(Locale::forLanguageTag)
                .orElse(shop.region()),
            shop.invented(),
            Optional.ofNullable(kept.get("colour")).map(Colour::of).orElse(shop.colour()),
            shop.logo()),
        kept.isEmpty() ? now.templates() : templates(kept));
  }

  private static Templates templates(Map<String, String> kept) {
    Map<String, String> texts = new TreeMap<>();
    kept.forEach(
        (key, text) -> {
          if (key.startsWith(TEMPLATE)) {
            texts.put(key.substring(TEMPLATE.length()), text);
          }
        });
    return new Templates(texts);
  }

  private static String printed(Head head) {
    return head.sequence() > 0 ? head.printed() : "";
  }
}
