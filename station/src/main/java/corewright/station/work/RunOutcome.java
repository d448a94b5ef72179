package corewright.station.work;

import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.files.Origin;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.ledger.RunBegun;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How a run came out. With how it was begun it makes the one record of a run, whether a bench made
 * it, a file was taken for it, or a program died in it.
 *
 * @param bench text of the bench description; empty where no bench was described
 * @param equipment what took part, with its calibration
 * @param capture path of the capture in the shop's folder; empty where nothing was kept
 * @param sha256 of that file
 * @param troubles what was left unconfirmed
 * @param measured empty where nothing was sampled
 */
record RunOutcome(
    Instant ended,
    Optional<Origin> bench,
    List<EquipmentUsed> equipment,
    String capture,
    String sha256,
    RunEnd end,
    List<String> troubles,
    Optional<MeasuredRun> measured) {

  /** The record, judged. */
  RunRecord of(RunBegun begun, Family family, Profile profile) {
    return of(begun, family, profile, List.of());
  }

  /**
   * The record, judged on a bench that may be in doubt.
   *
   * @param reference what the bench's reference units showed
   */
  RunRecord of(RunBegun begun, Family family, Profile profile, List<String> reference) {
    return new RunRecord(
        begun.id(),
        begun.tag(),
        begun.purpose(),
        begun.number(),
        begun.source(),
        begun.started(),
        ended,
        begun.operator(),
        begun.bench(),
        begun.fixture(),
        profile.id(),
        profile.revision(),
        profile.origin(),
        family.origin(),
        bench,
        equipment,
        Software.version(),
        capture,
        sha256,
        end,
        troubles,
        measured,
        Assessing.judge(measured, family, profile, end, reference));
  }
}
