package corewright.reports.document;

import corewright.reports.document.template.Templates;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;

/**
 * What a document says besides the record: a copy made years later is made with the same.
 *
 * @param at when it was given out
 * @param zone where the shop was: a day was a day there
 * @param head where the record ended, as {@link KeptRecord#head}
 * @param shop whose paper it was
 * @param templates what the shop had made of its documents
 * @param answered who answers for the limits of the last run
 */
public record Given(
    Instant at, ZoneId zone, String head, Shop shop, Templates templates, List<Answered> answered) {
  public Given {
    answered = List.copyOf(answered);
  }

  /** What nobody was asked to answer for. */
  public Given(Instant at, ZoneId zone, String head, Shop shop, Templates templates) {
    this(at, zone, head, shop, templates, List.of());
  }

  /** The same, with who answers for the limits. */
  public Given answeredBy(List<Answered> whom) {
    return new Given(at, zone, head, shop, templates, whom);
  }
}
