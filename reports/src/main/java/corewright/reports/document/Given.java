package corewright.reports.document;

import corewright.reports.document.template.Templates;
import java.time.Instant;
import java.time.ZoneId;

/**
 * What a document says besides the record: a copy made years later is made with the same.
 *
 * @param at when it was given out
 * @param zone where the shop was: a day was a day there
 * @param head where the record ended, as {@link KeptRecord#head}
 * @param shop whose paper it was
 * @param templates what the shop had made of its documents
 */
public record Given(Instant at, ZoneId zone, String head, Shop shop, Templates templates) {}
