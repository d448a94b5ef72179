package corewright.bench.record;

import corewright.files.Origin;
import corewright.measures.MeasuredRun;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One run, immutable: what it used, what was measured, how it was judged. Holds the whole text and
 * hash of what it was held against, so that a later edit never changes an old verdict.
 *
 * @param id unique across benches: bench, counter and random part
 * @param tag the unit
 * @param purpose {@code arrival}, {@code ship} or {@code claim}
 * @param number counted per unit and purpose from 1, as in "run 3 of 3"
 * @param bench id of the bench, or {@code import}
 * @param fixture id of the fixture, or empty
 * @param operator who ran it
 * @param capture path of the capture file, relative to the ledger's folder
 * @param captureSha256 hash of its bytes
 * @param troubles what of the safe state could not be confirmed at the end, each a sentence; while
 *     there is one, the unit counts as charged
 */
public record RunRecord(
    String id,
    String tag,
    String purpose,
    int number,
    Source source,
    Instant started,
    Instant ended,
    String operator,
    String bench,
    String fixture,
    String profileId,
    int profileRevision,
    Origin profile,
    Origin family,
    Optional<Origin> benchDescription,
    List<EquipmentUsed> equipment,
    String software,
    String capture,
    String captureSha256,
    RunEnd end,
    List<String> troubles,
    Optional<MeasuredRun> measured,
    Judgement judgement) {

  public RunRecord {
    equipment = List.copyOf(equipment);
    troubles = List.copyOf(troubles);
  }
}
