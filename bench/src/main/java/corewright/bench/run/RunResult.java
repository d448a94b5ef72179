package corewright.bench.run;

import corewright.bench.capture.OpenRun;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Source;
import corewright.measures.Capture;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What a run left behind. Once it is in the record, say so: {@code OpenRuns.settled(openRun)}.
 *
 * @param run names the files
 * @param source {@link Source#EMULATED} as soon as one instrument says that it is
 * @param capture what was sampled while the profile's holds ran, to be measured; empty if it never
 *     came to a hold
 * @param file the sealed capture; empty if nothing was sampled
 * @param sha256 of its bytes; empty if nothing was sampled
 * @param troubles what of the safe state could not be confirmed, each a sentence
 * @param beside what thermometer and meter read, where the bench has them
 */
public record RunResult(
    OpenRun run,
    RunEnd end,
    Source source,
    Instant started,
    Instant ended,
    List<EquipmentUsed> equipment,
    List<GuardFinding> guards,
    Optional<Capture> capture,
    Optional<Path> file,
    String sha256,
    List<String> troubles,
    Beside beside) {

  public RunResult {
    equipment = List.copyOf(equipment);
    guards = List.copyOf(guards);
    troubles = List.copyOf(troubles);
  }
}
