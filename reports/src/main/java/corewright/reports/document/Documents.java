package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.reports.chart.Evidence;
import java.nio.file.Path;
import java.time.Clock;

/** Writes what goes to the customer, as PDF. Keep one for many documents: the first one is slow. */
@SuppressWarnings("DoNotCallSuggester") // being built
public final class Documents {

  /**
   * @param clock what the date of issue is read from
   */
  public Documents(Shop shop, Evidence evidence, Clock clock) {}

  /**
   * Writes the one page about a unit: what it is, what it did, where it goes.
   *
   * @param folder where the document goes; made if missing
   * @return the document
   */
  public Path testReport(Dossier dossier, Path folder) {
    throw new UnsupportedOperationException("being built");
  }

  /** Writes the warranty report that leaves with a rebuilt unit: arrived against left. */
  public Path warrantyReport(Dossier dossier, Path folder) {
    throw new UnsupportedOperationException("being built");
  }
}
