package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.life.Never;
import corewright.bench.life.Secrets;

/** What no event may say: every free text goes through here, whoever typed it and wherever. */
final class Unsaid {
  private Unsaid() {}

  /**
   * Refuses a text that holds a secret; the refusal itself does not repeat it.
   *
   * @param where as {@code U-000017, received}
   */
  static void refuse(JsonNode body, String where) {
    if (body.isTextual()) {
      Secrets.in(body.asText())
          .ifPresent(
              named -> {
                throw new LedgerFault(
                    Never.KEEP_A_SECRET.said(
                        where + ": a text holds '" + named + "' with its code beside it"),
                    Never.KEEP_A_SECRET.remedy());
              });
    } else {
      body.forEach(part -> refuse(part, where));
    }
  }
}
