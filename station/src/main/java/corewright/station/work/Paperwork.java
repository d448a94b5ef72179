package corewright.station.work;

import corewright.bench.record.Dossier;
import corewright.reports.document.Documents;
import corewright.reports.document.Label;
import java.nio.file.Path;

/**
 * One kind of paper about a unit: what the ledger calls it, and how it is written.
 *
 * @param kind as in {@code warranty report}
 */
public record Paperwork(String kind, Writer writer) {
  public static final Paperwork TEST_REPORT = new Paperwork("test report", Documents::testReport);
  public static final Paperwork WARRANTY_REPORT =
      new Paperwork("warranty report", Documents::warrantyReport);
  public static final Paperwork CERTIFICATE = new Paperwork("certificate", Documents::certificate);
  public static final Paperwork LETTER = new Paperwork("letter", Documents::letter);
  public static final Paperwork INSTALL_SHEET =
      new Paperwork("install sheet", Documents::installSheet);
  public static final Paperwork TRAVELLER = new Paperwork("rebuild sheet", Documents::traveller);
  public static final Paperwork MARK_SHEET = new Paperwork("mark sheet", Documents::markSheet);

  /** The tag that is tied to a core. */
  public static Paperwork coreTag(Label size) {
    return new Paperwork(
        "core tag", (documents, dossier, folder) -> documents.coreTag(dossier, size, folder));
  }

  /** The label of a unit that leaves. */
  public static Paperwork unitLabel(Label size) {
    return new Paperwork(
        "unit label", (documents, dossier, folder) -> documents.unitLabel(dossier, size, folder));
  }

  /** Writes one paper into a folder. */
  @FunctionalInterface
  public interface Writer {
    /**
     * @throws corewright.reports.document.Refusal if the record does not support it
     */
    Path write(Documents documents, Dossier dossier, Path folder);
  }
}
