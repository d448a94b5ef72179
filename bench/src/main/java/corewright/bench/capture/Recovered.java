package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What is left of a run whose program died.
 *
 * @param end ABANDONED, unless the run itself had come to its end before the program died
 * @param file the sealed capture; empty if nothing was sampled
 * @param sha256 of its bytes; empty if nothing was sampled
 * @param capture what was sampled while the profile's holds ran
 */
public record Recovered(
    OpenRun run, RunEnd end, Optional<Path> file, String sha256, Optional<Capture> capture) {}
