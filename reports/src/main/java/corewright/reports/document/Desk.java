package corewright.reports.document;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.chart.Evidence;
import corewright.reports.chart.Pictures;
import corewright.reports.chart.Type;
import corewright.reports.chart.Words;
import corewright.reports.document.template.Templates;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What every document of a shop is made with.
 *
 * @param clock what the date of issue is read from
 * @param templates what the shop made of them
 * @param record what documents are made from
 * @param answered who answers for the limits of the last run
 */
record Desk(
    Shop shop,
    Evidence evidence,
    Clock clock,
    KeptRecord record,
    Templates templates,
    List<Answered> answered) {

  /** The same desk on the day when a document was given out. */
  Desk on(Given given) {
    return new Desk(
        given.shop(),
        evidence,
        Clock.fixed(given.at(), given.zone()),
        new KeptRecord() {
          @Override
          public String head() {
            return given.head();
          }

          @Override
          public String text(Object part) {
            return record.text(part);
          }
        },
        given.templates(),
        given.answered());
  }

  Instant issue() {
    return clock.instant();
  }

  Paper paper() {
    return Paper.of(shop.region());
  }

  Pictures pictures() {
    return new Pictures(evidence, shop.region());
  }

  Words words() {
    return Words.of(Documents.class, shop.region());
  }

  String title(String kind, Dossier dossier) {
    return words().get(kind) + " " + dossier.core().tag();
  }

  static Path file(String kind, Dossier dossier, Path folder) {
    String name = dossier.core().tag().replaceAll("[^0-9A-Za-z-]", "_");
    return folder.resolve(name + "-visit-" + dossier.visit() + "-" + kind + ".pdf");
  }

  /**
   * What the parts of a page share.
   *
   * @param room what there is room for
   */
  Page page(
      Optional<RunRecord> run,
      Optional<RunRecord> arrived,
      boolean pictured,
      Optional<Issue> issue,
      Room room) {
    return new Page(
        new Markup(),
        words(),
        shop.region(),
        new Clean(Type::canPrint),
        shop,
        LocalDate.ofInstant(issue(), clock.getZone()),
        clock.getZone(),
        run,
        arrived,
        run.flatMap(evidence::family),
        run.flatMap(evidence::profile),
        pictured,
        record.head(),
        issue,
        templates,
        answered,
        room);
  }
}
