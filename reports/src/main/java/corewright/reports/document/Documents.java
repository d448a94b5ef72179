package corewright.reports.document;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.chart.Evidence;
import corewright.reports.chart.Picture;
import corewright.reports.chart.Pictures;
import corewright.reports.chart.Type;
import corewright.reports.chart.Words;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes what the shop hands out, as PDF. Keep one for many documents: the first one is slow. */
public final class Documents {
  private final Shop shop;
  private final Evidence evidence;
  private final Clock clock;
  private final Supplier<String> head;

  /**
   * @param clock what the date of issue is read from
   */
  public Documents(Shop shop, Evidence evidence, Clock clock) {
    this(shop, evidence, clock, () -> "");
  }

  /**
   * @param clock what the date of issue is read from
   * @param head where the record ends when a document is made, to be printed on it; may give
   *     nothing
   */
  public Documents(Shop shop, Evidence evidence, Clock clock, Supplier<String> head) {
    this.shop = shop;
    this.evidence = evidence;
    this.clock = clock;
    this.head = head;
  }

  /**
   * Writes the one page about a unit: what it is, what it did, where it goes.
   *
   * @param folder where the document goes; made if missing
   * @return the document
   */
  public Path testReport(Dossier dossier, Path folder) {
    Optional<RunRecord> run = Supported.last(dossier);
    Optional<Picture> picture = run.flatMap(r -> new Pictures(evidence, shop.region()).of(r));
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
    Pictures pictures = new Pictures(evidence, shop.region());
    Optional<Picture> picture =
        arrived.flatMap(a -> pictures.of(left, a)).or(() -> pictures.of(left));
    return new Sheet(Paper.of(shop.region()), picture)
        .write(
            room -> page(Optional.of(left), arrived, picture.isPresent(), room),
            page -> new WarrantyReport(page).body(dossier),
            title("warranty-report", dossier),
            file("warranty-report", dossier, folder));
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
    return new Sheet(Paper.of(shop.region()), picture)
        .write(
            room -> page(run, Optional.empty(), picture.isPresent(), room),
            parts,
            title(kind, dossier),
            file(kind, dossier, folder));
  }

  private Path label(
      String kind,
      Dossier dossier,
      Optional<RunRecord> run,
      Label label,
      Path folder,
      Function<LabelPart, Element> parts) {
    Page page = page(run, Optional.empty(), false, 1);
    Document document =
        page.markup()
            .page(
                title(kind, dossier),
                page.locale(),
                label.paper().css() + Markup.css("label.css"),
                parts.apply(new LabelPart(page, label)));
    Path file = file(kind + "-" + label.size(), dossier, folder);
    return Pdf.file(document, Drawings.NONE, file);
  }

  private String title(String kind, Dossier dossier) {
    return Words.of(Documents.class, shop.region()).get(kind) + " " + dossier.core().tag();
  }

  private static Path file(String kind, Dossier dossier, Path folder) {
    String name = dossier.core().tag().replaceAll("[^0-9A-Za-z-]", "_");
    return folder.resolve(name + "-visit-" + dossier.visit() + "-" + kind + ".pdf");
  }

  private Page page(
      Optional<RunRecord> run, Optional<RunRecord> arrived, boolean pictured, double room) {
    return new Page(
        new Markup(),
        Words.of(Documents.class, shop.region()),
        shop.region(),
        new Clean(Type::canPrint),
        shop,
        LocalDate.ofInstant(clock.instant(), clock.getZone()),
        clock.getZone(),
        run,
        arrived,
        run.flatMap(evidence::family),
        run.flatMap(evidence::profile),
        pictured,
        head.get(),
        room);
  }
}
