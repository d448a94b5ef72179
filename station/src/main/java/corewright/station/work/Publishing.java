package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.chart.Charts;
import corewright.reports.document.ClaimCase;
import corewright.reports.document.Documents;
import corewright.reports.ledger.Ledger;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/** Writes what is handed out, and notes in the ledger that it was. */
public final class Publishing {
  private final Ledger ledger;
  private final Folders folders;
  private final Documents documents;
  private final Charts charts;

  public Publishing(Ledger ledger, Folders folders, Documents documents, Charts charts) {
    this.ledger = ledger;
    this.folders = folders;
    this.documents = documents;
    this.charts = charts;
  }

  /**
   * Writes one kind of paper about a unit; a copy has the date of the first.
   *
   * @throws corewright.reports.document.Refusal if the record does not support it
   */
  public Path write(Paperwork paper, String tag, String who) {
    Dossier dossier = ledger.dossier(tag);
    Optional<Instant> first =
        dossier.runs().stream()
            .reduce((a, b) -> b)
            .flatMap(last -> ledger.papers().firstDocumented(tag, paper.kind(), last.ended()));
    Path file = paper.writer().write(documents.issued(first), dossier, folders.documents());
    ledger.papers().documented(tag, paper.kind(), file, CaptureFile.sha256(file), who);
    return file;
  }

  /** Writes the report of a claim. */
  public Path claimReport(ClaimCase claim, String who) {
    String tag = claim.now().core().tag();
    Path file = documents.claimReport(claim, folders.documents());
    ledger.papers().documented(tag, "claim report", file, CaptureFile.sha256(file), who);
    return file;
  }

  /** The picture of the last run, as SVG; empty where nothing was sampled. */
  public Optional<Path> chart(String tag) {
    Dossier dossier = ledger.dossier(tag);
    if (dossier.runs().isEmpty()) {
      return Optional.empty();
    }
    RunRecord last = dossier.runs().get(dossier.runs().size() - 1);
    return charts.svg(last, folders.charts());
  }
}
