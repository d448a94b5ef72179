package corewright.reports.document;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.chart.Evidence;
import corewright.reports.chart.Picture;
import corewright.reports.document.genuine.Signer;
import corewright.reports.document.template.Templates;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes what the shop hands out, as PDF. Keep one for many documents: the first one is slow. */
public final class Documents {
  private final Desk desk;
  private final Optional<Signer> signer;

  /** For a shop that signs nothing. */
  public Documents(Shop shop, Evidence evidence, Clock clock) {
    this(shop, evidence, clock, KeptRecord.NONE, Optional.empty());
  }

  /**
   * @param clock what the date of issue is read from
   * @param record what the documents are made from
   * @param signer signs certificates; without one there are only specimens
   */
  public Documents(
      Shop shop, Evidence evidence, Clock clock, KeptRecord record, Optional<Signer> signer) {
    this(new Desk(shop, evidence, clock, record, Templates.SHIPPED, List.of()), signer);
  }

  private Documents(Desk desk, Optional<Signer> signer) {
    this.desk = desk;
    this.signer = signer;
  }

  /**
   * What the type has no letters for, each a sentence with the field and what to do: to be said
   * before a document about the unit is printed. Usually empty.
   */
  public List<String> lacking(Dossier dossier) {
    return Lacking.of(desk.shop(), dossier, desk.words());
  }

  /** Writes documents as a shop has changed them. */
  public Documents with(Templates own) {
    return new Documents(
        new Desk(desk.shop(), desk.evidence(), desk.clock(), desk.record(), own, desk.answered()),
        signer);
  }

  /** What a document that is made now says besides the record. */
  public Given now() {
    return new Given(
        desk.issue(), desk.clock().getZone(), desk.record().head(), desk.shop(), desk.templates());
  }

  /** Writes documents as they were made on another day. */
  public Documents as(Given given) {
    return new Documents(desk.on(given), signer);
  }

  /**
   * Writes the one page about a unit: what it is, what it did, where it goes.
   *
   * @param folder where the document goes; made if missing
   * @return the document
   */
  public Path testReport(Dossier dossier, Path folder) {
    Optional<RunRecord> run = Supported.last(dossier);
    Optional<Picture> picture = run.flatMap(r -> desk.pictures().of(r));
    return sheet(
        "test-report", dossier, run, picture, folder, page -> new TestReport(page).body(dossier));
  }

  /**
   * Writes the warranty report that leaves with a rebuilt unit: arrived against left.
   *
   * @throws Refusal if the record does not show a unit that was rebuilt and then passed its test
   */
  public Path warrantyReport(Dossier dossier, Path folder) {
    RunRecord left = Supported.leaving(dossier);
    Optional<RunRecord> arrived = Supported.arrived(dossier);
    Optional<Picture> picture =
        arrived.flatMap(a -> desk.pictures().of(left, a)).or(() -> desk.pictures().of(left));
    return new Sheet(desk.paper(), picture, desk.shop().logo())
        .write(
            room ->
                desk.page(Optional.of(left), arrived, picture.isPresent(), Optional.empty(), room),
            page -> new WarrantyReport(page).body(dossier),
            desk.title("warranty-report", dossier),
            Desk.file("warranty-report", dossier, folder));
  }

  /**
   * Writes the certificate of a unit's last test: a page for the customer, pages for the expert,
   * the record and the curves inside, signed over every byte.
   *
   * @throws Refusal if the record does not support one
   */
  public Path certificate(Dossier dossier, Path folder) {
    return new Certifying(desk, signer).write(dossier, folder);
  }

  /** Writes the report of a claim, open or closed. */
  public Path claimReport(ClaimCase claim, Path folder) {
    List<RunRecord> others =
        Stream.of(claim.received(), claim.returned()).flatMap(Optional::stream).toList();
    Optional<Picture> picture = desk.pictures().of(claim.shipped(), others);
    Optional<RunRecord> run = claim.returned().or(() -> Optional.of(claim.shipped()));
    return new Sheet(desk.paper(), picture, desk.shop().logo())
        .write(
            room -> desk.page(run, Optional.empty(), picture.isPresent(), Optional.empty(), room),
            page -> new ClaimReport(page).body(claim),
            desk.title("claim-report", claim.now()),
            Desk.file("claim-report-" + claim.number(), claim.now(), folder));
  }

  /**
   * Writes the letter about what was decided, or about the question that is open.
   *
   * @throws Refusal if nothing was decided yet
   */
  public Path letter(Dossier dossier, Path folder) {
    Supported.decided(dossier);
    return sheet("letter", dossier, folder, page -> new Letter(page).body(dossier));
  }

  /** Writes what whoever fits the unit does, in order. */
  public Path installSheet(Dossier dossier, Path folder) {
    return sheet("install-sheet", dossier, folder, page -> new InstallSheet(page).body(dossier));
  }

  /**
   * Writes the sheet that goes with a unit through its rebuild.
   *
   * @throws Refusal if it was not decided that the unit is rebuilt
   */
  public Path traveller(Dossier dossier, Path folder) {
    Decision decision = Supported.decided(dossier);
    if (decision.disposition() != Disposition.REBUILD) {
      throw new Refusal(
          "Unit " + dossier.core().tag() + " is not rebuilt: it is " + decision.disposition(),
          "Decide otherwise first, and say why");
    }
    return sheet("traveller", dossier, folder, page -> new Traveller(page).body(dossier));
  }

  /** Writes the sheet on which the hidden mark of a unit is kept. */
  public Path markSheet(Dossier dossier, Path folder) {
    return sheet("mark-sheet", dossier, folder, page -> new MarkSheet(page).body(dossier));
  }

  /** Writes the tag that is tied to a core when it is received. */
  public Path coreTag(Dossier dossier, Label label, Path folder) {
    return label(
        "core-tag", dossier, Supported.last(dossier), label, folder, part -> part.core(dossier));
  }

  /**
   * Writes the label of a unit that leaves.
   *
   * @throws Refusal if the record does not show a unit that was rebuilt and then passed its test
   */
  public Path unitLabel(Dossier dossier, Label label, Path folder) {
    RunRecord left = Supported.leaving(dossier);
    return label(
        "unit-label", dossier, Optional.of(left), label, folder, part -> part.unit(dossier, left));
  }

  private Path sheet(String kind, Dossier dossier, Path folder, Function<Page, Element> parts) {
    return sheet(kind, dossier, Supported.last(dossier), Optional.empty(), folder, parts);
  }

  private Path sheet(
      String kind,
      Dossier dossier,
      Optional<RunRecord> run,
      Optional<Picture> picture,
      Path folder,
      Function<Page, Element> parts) {
    return new Sheet(desk.paper(), picture, desk.shop().logo())
        .write(
            room -> desk.page(run, Optional.empty(), picture.isPresent(), Optional.empty(), room),
            parts,
            desk.title(kind, dossier),
            Desk.file(kind, dossier, folder));
  }

  private Path label(
      String kind,
      Dossier dossier,
      Optional<RunRecord> run,
      Label label,
      Path folder,
      Function<LabelPart, Element> parts) {
    Page page = desk.page(run, Optional.empty(), false, Optional.empty(), Room.WHOLE);
    Document document =
        page.markup()
            .page(
                desk.title(kind, dossier),
                page.locale(),
                label.paper().css() + Markup.css("label.css"),
                parts.apply(new LabelPart(page, label)));
    Path file = Desk.file(kind + "-" + label.size(), dossier, folder);
    return Pdf.keep(Pdf.of(document, Drawings.NONE), file);
  }
}
