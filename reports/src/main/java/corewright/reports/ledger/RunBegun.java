package corewright.reports.ledger;

import corewright.bench.record.Source;
import java.time.Instant;
import java.util.Objects;

/**
 * A run that is about to energise a unit, written down before anything is switched on: if the
 * process dies, the next start knows which unit, which bench and which capture to look after.
 *
 * @param id unique across benches: bench, counter and random part
 * @param purpose {@code arrival}, {@code ship} or {@code claim}
 * @param number counted per unit and purpose from 1
 * @param fixture id of the fixture, or empty
 * @param capture path of the capture file, relative to the ledger's folder
 * @param second who stood by, where the unit's voltage demands it; empty: nobody had to, or the
 *     event is of a time when it was not kept
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
    String capture,
    String second) {

  public RunBegun {
    second = Objects.requireNonNullElse(second, "");
  }

  /** A run beside which nobody had to stand. */
  public RunBegun(
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
      String capture) {
    this(
        id, tag, purpose, number, source, started, operator, bench, fixture, profileId, capture,
        "");
  }
}
