package corewright.station.work;

import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where one unit has got to: what the last line of a command is made from.
 *
 * @param document the PDF that was written
 * @param chart the picture as a file of its own; empty where nothing was sampled
 */
public record Outcome(
    Core core,
    Optional<Identification> identification,
    RunRecord run,
    Decision decision,
    Path document,
    Optional<Path> chart) {}
