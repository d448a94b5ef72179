package corewright.station.work;

import corewright.bench.record.Dossier;
import corewright.reports.document.Documents;
import corewright.reports.document.Label;
import java.nio.file.Path;

/**
 * One kind of paper about a unit: what the ledger calls it, and how it is written.
 *
 * @param kind as in {@code warranty report}
 * @param again what it says when it is written a second time
 */
public record Paperwork(String kind, Again again, Writer writer) {
  public static final Paperwork TEST_REPORT =
      new Paperwork("test report", Again.UNLESS_NEW, Documents::testReport);
  public static final Paperwork WARRANTY_REPORT =
      new Paperwork("warranty report", Again.SAME_DAY, Documents::warrantyReport);
  public static final Paperwork CERTIFICATE =
      new Paperwork("certificate", Again.THE_SAME, Documents::certificate);
  public static final Paperwork LETTER =
      new Paperwork("letter", Again.UNLESS_NEW, Documents::letter);
  public static final Paperwork INSTALL_SHEET =
      new Paperwork("install sheet", Again.UNLESS_NEW, Documents::installSheet);
  public static final Paperwork TRAVELLER =
      new Paperwork("rebuild sheet", Again.UNLESS_NEW, Documents::traveller);
  public static final Paperwork MARK_SHEET =
      new Paperwork("mark sheet", Again.UNLESS_NEW, Documents::markSheet);

  /** The tag that is tied to a core. */
  public static Paperwork coreTag(Label size) {
    return new Paperwork(
        "core tag",
        Again.UNLESS_NEW,
        (documents, dossier, folder) -> documents.coreTag(dossier, size, folder));
  }

  /** The label of a unit that leaves. */
  public static Paperwork unitLabel(Label size) {
    return new Paperwork(
        "unit label",
        Again.UNLESS_NEW,
        (documents, dossier, folder) -> documents.unitLabel(dossier, size, folder));
  }

  /** Whether others rely on it that the unit kept its limits. */
  boolean saysItPassed() {
    return equals(CERTIFICATE) || equals(WARRANTY_REPORT);
  }

  /** What a paper says when it is written a second time after the same run. */
  public enum Again {
    /** What it said the first time, whatever was written down since. */
    THE_SAME,
    /** What is known now, with the day of the first: a warranty runs from it. */
    SAME_DAY,
    /** What it said the first time, unless something was written down since. */
    UNLESS_NEW
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
