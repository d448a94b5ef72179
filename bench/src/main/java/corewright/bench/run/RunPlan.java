package corewright.bench.run;

import corewright.bench.record.HandReading;
import corewright.fixtures.describe.BenchDescription;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.nio.file.Path;
import java.util.Map;

/**
 * What is to be run, on what, by whom.
 *
 * @param runId unique across benches; names the files
 * @param tag the unit
 * @param folder where the capture goes; created if missing
 * @param byHand what people read elsewhere, by id of the step
 */
public record RunPlan(
    String runId,
    String tag,
    Family family,
    Profile profile,
    BenchDescription bench,
    String operator,
    Path folder,
    Confirmations confirmations,
    Map<String, HandReading> byHand) {

  public RunPlan {
    byHand = Map.copyOf(byHand);
  }

  /** A run in which nobody enters anything. */
  public RunPlan(
      String runId,
      String tag,
      Family family,
      Profile profile,
      BenchDescription bench,
      String operator,
      Path folder,
      Confirmations confirmations) {
    this(runId, tag, family, profile, bench, operator, folder, confirmations, Map.of());
  }
}
