package corewright.reports.document;

import static java.nio.charset.StandardCharsets.UTF_8;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.chart.Picture;
import corewright.reports.chart.Words;
import corewright.reports.document.genuine.Attachment;
import corewright.reports.document.genuine.ShortCode;
import corewright.reports.document.genuine.SignedPdf;
import corewright.reports.document.genuine.Signer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes a certificate out of a record: numbered, with its record inside, signed. */
final class Certifying {
  private static final String KIND = "certificate";
  private final Desk desk;
  private final Optional<Signer> signer;

  Certifying(Desk desk, Optional<Signer> signer) {
    this.desk = desk;
    this.signer = signer;
  }

  /**
   * @throws Refusal if the record does not support a certificate, or if nobody can sign it
   */
  Path write(Dossier dossier, Path folder) {
    RunRecord run = Supported.certified(dossier, desk.clock().getZone());
    Path file = Desk.file(KIND, dossier, folder);
    if (desk.page(Optional.of(run), Optional.empty(), false, Optional.empty(), Room.WHOLE)
        .specimen()) {
      return Pdf.keep(pages(dossier, run, Optional.empty()), file);
    }
    Signer own =
        signer.orElseThrow(
            () ->
                new Refusal(
                    "There is no key to sign a certificate with",
                    "Open the shop's own folder: its key lies in it"));
    byte[] record =
        desk.record().text(new Certified(number(run), desk.shop().name(), dossier)).getBytes(UTF_8);
    Issue issue = new Issue(number(run), ShortCode.of(record));
    Words words = desk.words();
    List<Attachment> files = new ArrayList<>();
    files.add(
        new Attachment(
            Attachment.RECORD, "application/json", words.get("certificate.record"), record));
    desk.evidence()
        .capture(run)
        .map(Curves::csv)
        .ifPresent(
            csv ->
                files.add(
                    new Attachment(
                        Attachment.CURVES, "text/csv", words.get("certificate.curves"), csv)));
    byte[] signed =
        new SignedPdf(own, desk.shop().name())
            .of(
                pages(dossier, run, Optional.of(issue)),
                files,
                words.get("certificate.signed", run.tag()),
                desk.issue());
    return Pdf.keep(signed, file);
  }

  /**
   * What the record of a certificate holds.
   *
   * @param number of the certificate
   * @param shop who gave it out
   */
  private record Certified(String number, String shop, Dossier dossier) {}

  private byte[] pages(Dossier dossier, RunRecord run, Optional<Issue> issue) {
    Optional<RunRecord> arrived =
        Supported.arrived(dossier).filter(a -> !dossier.rebuild().isEmpty());
    Optional<Picture> picture =
        arrived.flatMap(a -> desk.pictures().of(run, a)).or(() -> desk.pictures().of(run));
    String number = issue.map(Issue::number).orElse(run.tag());
    return new Sheet(desk.paper().numbered(number), picture, desk.shop().logo())
        .pdf(
            room -> desk.page(Optional.of(run), arrived, picture.isPresent(), issue, room),
            page -> new Certificate(page).body(dossier),
            desk.title(KIND, dossier));
  }

  /** One for each run: the same run never has two. */
  static String number(RunRecord run) {
    return run.tag() + "-" + run.purpose().substring(0, 1).toUpperCase(Locale.ROOT) + run.number();
  }
}
