package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.chart.Charts;
import corewright.reports.document.ClaimCase;
import corewright.reports.document.Documents;
import corewright.reports.document.Given;
import corewright.reports.ledger.Head;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Papers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes what is handed out, and notes in the ledger that it was. */
public final class Publishing {
  private final Ledger ledger;
  private final Folders folders;
  private final Documents documents;
  private final Charts charts;
  private final SignedLimits limits;

  public Publishing(
      Ledger ledger, Folders folders, Documents documents, Charts charts, SignedLimits limits) {
    this.ledger = ledger;
    this.folders = folders;
    this.documents = documents;
    this.charts = charts;
    this.limits = limits;
  }

  /**
   * Writes one kind of paper about the latest visit of a unit.
   *
   * @throws corewright.reports.document.Refusal if the record does not support it
   */
  public Path write(Paperwork paper, String tag, String who) {
    return write(paper, ledger.dossier(tag), who);
  }

  /**
   * Writes one kind of paper about a visit of a unit. A copy says what the first said, with the day
   * and the head of then.
   *
   * @throws corewright.reports.document.Refusal if the record does not support it
   * @throws Refused if it would say that the unit passed, and nobody answers for the limits
   */
  public Path write(Paperwork paper, Dossier dossier, String who) {
    String tag = dossier.core().tag();
    Given now = now(tag);
    Instant since =
        dossier.runs().stream()
            .reduce((a, b) -> b)
            .map(RunRecord::ended)
            .orElse(dossier.core().received());
    Optional<Papers.Given> first = ledger.papers().first(tag, dossier.visit(), paper.kind(), since);
    if (paper.saysItPassed()) {
      refuseSuspect(dossier);
    }
    if (paper.saysItPassed() && first.isEmpty()) {
      limits.mustBeAnsweredFor(dossier);
    }
    Given then = first.map(f -> given(paper.again(), f, dossier, now)).orElse(now);
    Dossier told =
        paper.again() == Paperwork.Again.THE_SAME
            ? first.map(Papers.Given::dossier).orElse(dossier)
            : dossier;
    Given given = then.answeredBy(limits.answered(told, then.at()));
    Path file = paper.writer().write(documents.as(given), told, folders.documents());
    add(tag, paper.kind(), file, given, who);
    return file;
  }

  /** A copy is refused as well: nobody hands out again what is in doubt now. */
  private void refuseSuspect(Dossier dossier) {
    dossier.runs().stream()
        .reduce((a, b) -> b)
        .flatMap(run -> ledger.benches().suspect(run.bench(), run.tag(), run.id()))
        .ifPresent(
            why -> {
              throw new Refused(
                  "The last result of unit "
                      + dossier.core().tag()
                      + " is suspect: the bench it was measured on did not pass its next check. "
                      + why,
                  "Test the unit again on a bench that is in order.");
            });
  }

  private static Given given(
      Paperwork.Again again, Papers.Given first, Dossier dossier, Given now) {
    Given then = Letterhead.of(first, now);
    if (again == Paperwork.Again.THE_SAME || first.dossier().equals(dossier)) {
      return then;
    }
    return again == Paperwork.Again.SAME_DAY
        ? new Given(then.at(), then.zone(), now.head(), now.shop(), now.templates())
        : now;
  }

  /** The head is that of the chain with the unit's newest event: it holds the run. */
  private Given now(String tag) {
    Given now = documents.now();
    String head = ledger.papers().head(tag).map(Head::printed).orElse("");
    return new Given(now.at(), now.zone(), head, now.shop(), now.templates());
  }

  private void add(String tag, String kind, Path file, Given given, String who) {
    ledger.papers().add(tag, kind, file, CaptureFile.sha256(file), Letterhead.kept(given), who);
  }

  /** What is to be said before paper about a unit is printed: what the type has no letters for. */
  public List<String> cautions(Dossier dossier) {
    return documents.lacking(dossier);
  }

  /** Writes the report of a claim. */
  public Path claimReport(ClaimCase claim, String who) {
    String tag = claim.now().core().tag();
    Given given = now(tag);
    Path file = documents.as(given).claimReport(claim, folders.documents());
    add(tag, "claim report", file, given, who);
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

  /** The picture of one run; drawn when it is first asked for, empty where nothing was sampled. */
  public Optional<Path> picture(RunRecord run) {
    Path drawn = folders.charts().resolve(run.id() + ".svg");
    return Files.isRegularFile(drawn) ? Optional.of(drawn) : charts.svg(run, folders.charts());
  }

  /**
   * The headline hold of one run over those of others, the first dashed, the second dotted; empty
   * where one of them has none. Runs are never changed, so it is drawn once.
   */
  public Optional<Path> overlay(RunRecord front, List<RunRecord> others) {
    String name =
        Stream.concat(Stream.of(front), others.stream())
            .map(RunRecord::id)
            .collect(Collectors.joining("~"));
    String key = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    Path drawn = folders.charts().resolve("beside-" + key + ".svg");
    return Files.isRegularFile(drawn) ? Optional.of(drawn) : charts.overlay(front, others, drawn);
  }
}
