package corewright.bench.run;

import corewright.fixtures.describe.BenchDescription;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.nio.file.Path;

/**
 * What is to be run, on what, by whom.
 *
 * @param runId unique across benches; names the files
 * @param tag the unit
 * @param folder where the capture goes; created if missing
 */
public record RunPlan(
    String runId,
    String tag,
    Family family,
    Profile profile,
    BenchDescription bench,
    String operator,
    Path folder,
    Confirmations confirmations) {}
