package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.reports.chart.Evidence;
import corewright.reports.chart.Picture;
import corewright.reports.chart.Pictures;
import corewright.reports.chart.Type;
import corewright.reports.chart.Words;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.w3c.dom.Element;

/** Writes what goes to the customer, as PDF. Keep one for many documents: the first one is slow. */
public final class Documents {
  private final Shop shop;
  private final Evidence evidence;
  private final Clock clock;
  private final Supplier<String> head;
  private final Locale locale = Locale.UK;

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
    Optional<RunRecord> run = last(dossier.runs(), r -> true);
    Optional<Picture> picture = run.flatMap(r -> new Pictures(evidence, locale).of(r));
    return write(
        "test-report",
        room -> page(run, Optional.empty(), picture.isPresent(), room),
        page -> new TestReport(page).body(dossier),
        picture,
        dossier,
        folder);
  }

  /**
   * Writes the warranty report that leaves with a rebuilt unit: arrived against left.
   *
   * @throws Refusal if the record does not show a unit that was rebuilt and then passed its test
   */
  public Path warrantyReport(Dossier dossier, Path folder) {
    RunRecord left = leaving(dossier);
    Optional<RunRecord> arrived = last(dossier.runs(), r -> r.purpose().equals("arrival"));
    Pictures pictures = new Pictures(evidence, locale);
    Optional<Picture> picture =
        arrived.flatMap(a -> pictures.of(left, a)).or(() -> pictures.of(left));
    return write(
        "warranty-report",
        room -> page(Optional.of(left), arrived, picture.isPresent(), room),
        page -> new WarrantyReport(page).body(dossier),
        picture,
        dossier,
        folder);
  }

  private Path write(
      String kind,
      DoubleFunction<Page> pages,
      Function<Page, Element> parts,
      Optional<Picture> picture,
      Dossier dossier,
      Path folder) {
    String tag = dossier.core().tag();
    String title = Words.of(Documents.class, locale).get(kind) + " " + tag;
    String name = tag.replaceAll("[^0-9A-Za-z-]", "_");
    Path file = folder.resolve(name + "-visit-" + dossier.visit() + "-" + kind + ".pdf");
    return new Sheet(picture).write(pages, parts, title, file);
  }

  /** The run that proves that a rebuilt unit may leave. */
  private static RunRecord leaving(Dossier dossier) {
    String tag = dossier.core().tag();
    if (dossier.rebuild().isEmpty()) {
      throw new Refusal(
          "Unit " + tag + " was not rebuilt on this visit", "Write down what was done to it first");
    }
    RunRecord last =
        last(dossier.runs(), r -> true)
            .filter(run -> run.purpose().equals("ship"))
            .orElseThrow(
                () ->
                    new Refusal(
                        "The last run of unit " + tag + " is not a test before shipping",
                        "Run its ship profile"));
    if (last.judgement().verdict().filter(v -> v == Verdict.PASS).isEmpty()) {
      throw new Refusal(
          "The last test before shipping of unit "
              + tag
              + " came to "
              + last.judgement().verdict().map(Verdict::name).orElse("no verdict")
              + last.judgement().reasons().stream().findFirst().map(r -> ": " + r).orElse(""),
          "Only a PASS leaves with a warranty");
    }
    return last;
  }

  private Page page(
      Optional<RunRecord> run, Optional<RunRecord> arrived, boolean pictured, double room) {
    return new Page(
        new Markup(),
        Words.of(Documents.class, locale),
        locale,
        new Clean(Type::canPrint),
        shop,
        LocalDate.ofInstant(clock.instant(), clock.getZone()),
        run,
        arrived,
        run.flatMap(evidence::family),
        run.flatMap(evidence::profile),
        pictured,
        head.get(),
        room);
  }

  private static Optional<RunRecord> last(List<RunRecord> runs, Predicate<RunRecord> which) {
    return runs.stream().filter(which).reduce((a, b) -> b);
  }
}
