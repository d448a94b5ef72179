package corewright.reports.chart;

import corewright.bench.record.RunRecord;
import java.nio.file.Path;
import java.util.Optional;

/** Writes the picture of a run as a file of its own. */
public final class Charts {

  private final Evidence evidence;

  public Charts(Evidence evidence) {
    this.evidence = evidence;
  }

  /**
   * Writes the picture of one run as SVG.
   *
   * @return the file; empty where the run left no capture
   */
  public Optional<Path> svg(RunRecord run, Path folder) {
    if (evidence.capture(run).isEmpty()) {
      return Optional.empty();
    }
    throw new UnsupportedOperationException("being built");
  }
}
