package corewright.reports.ledger;

import corewright.bench.record.Source;
import java.time.Instant;

/**
 * A run that is about to energise a unit, written down before anything is switched on: if the
 * process dies, the next start knows which unit, which bench and which capture to look after.
 *
 * @param id unique across benches: bench, counter and random part
 * @param purpose {@code arrival}, {@code ship} or {@code claim}
 * @param number counted per unit and purpose from 1
 * @param fixture id of the fixture, or empty
 * @param capture path of the capture file, relative to the ledger's folder
 */
public record RunBegun(
    String id,
    String tag,
    String purpose,
    int number,
    Source source,
    Instant started,
    String operator,
    String bench,
    String fixture,
    String profileId,
    String capture) {}
