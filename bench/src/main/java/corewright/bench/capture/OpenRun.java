package corewright.bench.capture;

import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A run that was begun and whose result is not yet in the record.
 *
 * @param runId names its files
 * @param folder where they are
 * @param notes what it was: tag, profile, bench, operator, when it began
 */
public record OpenRun(String runId, Path folder, SortedMap<String, String> notes) {

  public OpenRun {
    notes = new TreeMap<>(notes);
  }

  /** The samples as they arrived. */
  public Path raw() {
    return folder.resolve(runId + CaptureFile.RAW);
  }

  /** The sealed capture. */
  public Path sealed() {
    return folder.resolve(runId + CaptureFile.SEALED);
  }

  Path marker() {
    return folder.resolve(runId + OpenRuns.MARKER);
  }
}
