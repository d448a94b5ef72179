package corewright.station.web.did;

import corewright.bench.life.Stage;
import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Identification;
import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.measures.Chance;
import corewright.measures.MeasuredRun;
import corewright.reports.chart.Numerals;
import corewright.reports.chart.Words;
import corewright.reports.document.Answered;
import corewright.reports.ledger.Amendment;
import corewright.reports.ledger.RunFact;
import corewright.station.web.Next;
import corewright.station.web.When;
import corewright.station.work.Curves;
import corewright.station.work.RunStories.Story;
import corewright.station.work.SignedLimits;
import corewright.station.work.Told;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the page of one run shows, in words.
 *
 * @param verdict the word; {@code NO VERDICT} where none was given
 * @param form the verdict's outline; empty where there is none
 * @param as as in {@code as received, run 1 of 2}
 * @param told what was read too and judges nobody, and what was left out, a line each
 * @param question what is open, of a unit on hold; empty otherwise
 * @param signed who signed the limits that it was held against, and when, each a sentence
 * @param unsigned limits that nobody answers for; empty: somebody does for all
 * @param suspect why the bench is no longer believed; empty: it is
 * @param excluded what was looked at before the unit was suspected
 */
public record DidPage(
    String id,
    String tag,
    String family,
    String verdict,
    String form,
    String as,
    String sentence,
    String what,
    String where,
    boolean emulated,
    String source,
    boolean drawn,
    List<Readings.Row> rows,
    List<Readings.Row> all,
    List<String> told,
    String input,
    String rule,
    List<String> toDo,
    String question,
    List<Group> groups,
    boolean determined,
    String toBeSurer,
    List<String> excluded,
    List<Other> others,
    Optional<Strip> strip,
    String build,
    List<Amendment> amendments,
    List<String> reasons,
    String heldAgainst,
    List<String> signed,
    String unsigned,
    String suspect,
    Next next) {

  private static List<String> told(RunRecord run, Numerals numerals) {
    List<String> told = new ArrayList<>(Told.of(run, numerals::withU));
    told.addAll(run.measured().map(MeasuredRun::notes).orElse(List.of()));
    return told.stream().map(Words::tied).toList();
  }

  /**
   * A group of parts that the readings point at.
   *
   * @param side {@code over} or {@code under}; empty where the probability says it all
   */
  public record Group(
      String side,
      String probability,
      String words,
      List<String> evidenceFor,
      List<String> against) {}

  /** Another run of the unit, or this one. */
  public record Other(String id, String words, String verdict, boolean here) {}

  static DidPage of(
      Story story, Stage stage, Numerals numerals, SignedLimits limits, String suspect) {
    RunRecord run = story.run();
    Readings readings = new Readings(run, numerals);
    String build =
        story
            .dossier()
            .identification()
            .map(Identification::variant)
            .map(v -> "build " + v)
            .orElse("build not known");
    String verdict = run.judgement().verdict().map(Enum::name).orElse("");
    Optional<Diagnosis> diagnosis = story.diagnosis();
    return new DidPage(
        run.id(),
        run.tag(),
        story.dossier().core().family(),
        verdict.isEmpty() ? "NO VERDICT" : verdict,
        verdict,
        as(run, story.ofUnit()),
        sentence(story),
        story.dossier().core().family() + ", " + build,
        "bench " + run.bench() + ", " + When.moment(run.started()),
        run.source() == Source.EMULATED,
        run.source().words(),
        Curves.drawable(run),
        readings.worst(),
        readings.all(),
        told(run, numerals),
        readings.input().orElse(""),
        run.judgement().decisionRule(),
        toDo(run),
        isVoid(run) ? story.dossier().decision().map(Decision::question).orElse("") : "",
        diagnosis.map(Diagnosis::candidates).orElse(List.of()).stream()
            .map(DidPage::group)
            .toList(),
        diagnosis.map(Diagnosis::determined).orElse(false),
        diagnosis.flatMap(Diagnosis::next).orElse(""),
        diagnosis.map(Diagnosis::excluded).orElse(List.of()),
        story.ofUnit().stream()
            .map(r -> new Other(r.id(), others(r), r.verdict(), r.id().equals(run.id())))
            .toList(),
        Strip.of(story.headline(), story.siblings(), numerals),
        build,
        story.amendments(),
        run.judgement().reasons(),
        "Held against profile "
            + run.profileId()
            + ", revision "
            + run.profileRevision()
            + ", with the limits of hash "
            + run.profile().sha256().substring(0, 12)
            + "; measured by "
            + run.operator()
            + " with "
            + run.software(),
        limits.answered(run, story.dossier().core().family(), Instant.MAX).stream()
            .map(DidPage::signed)
            .toList(),
        String.join(", ", limits.unsigned(run, story.dossier().core().family())),
        suspect,
        next(run.tag(), stage));
  }

  private static String signed(Answered text) {
    return "Limits of "
        + text.what()
        + text.signed()
            .map(s -> ": signed by " + s.who() + ", " + When.moment(s.at()))
            .orElse(
                text.delivered()
                    ? ": as delivered, not signed in this shop"
                    : ": NOT SIGNED by anybody");
  }

  /** What was decided just now is seen, with its reasons, before it is done. */
  private static Next next(String tag, Stage stage) {
    return switch (stage) {
      case TO_REBUILD, TO_REPLACE, TO_RETURN -> Next.of(tag, Stage.TESTED);
      default -> Next.of(tag, stage);
    };
  }

  private static Group group(Diagnosis.Candidate c) {
    String sure = Chance.words(c.probability());
    int blank = sure.indexOf(' ');
    return new Group(
        sure.substring(0, Math.max(0, blank)),
        sure.substring(blank + 1),
        c.words(),
        c.evidenceFor(),
        c.evidenceAgainst());
  }

  private static String as(RunRecord run, List<RunFact> all) {
    long of = all.stream().filter(r -> r.purpose().equals(run.purpose())).count();
    return Purposes.words(run.purpose()) + ", run " + run.number() + " of " + of;
  }

  /** What the customer is told of the test, up to where the parts begin; the first reason else. */
  private static String sentence(Story story) {
    String told = story.finding();
    int parts = told.indexOf("This is consistent with");
    String finding = parts > 0 ? told.substring(0, parts).strip() : told;
    return finding.isEmpty() || isVoid(story.run())
        ? story.run().judgement().reasons().stream().findFirst().orElse(story.run().end().saw())
        : finding;
  }

  private static boolean isVoid(RunRecord run) {
    return run.judgement().verdict().filter(v -> v == Verdict.VOID).isPresent();
  }

  /** What to do about a run that says nothing of the unit: bench first, unit never. */
  private static List<String> toDo(RunRecord run) {
    if (!isVoid(run) && run.judgement().verdict().filter(v -> v == Verdict.INCOMPLETE).isEmpty()) {
      return List.of();
    }
    List<String> toDo = new ArrayList<>();
    boolean input = run.judgement().qualifier().filter(q -> q == Qualifier.VOID).isPresent();
    if (input) {
      toDo.add("Look at the source: its current limit, a fuse, the buffer behind it.");
      toDo.add("Look at what lies between source and unit: force pins, leads, contacts.");
    } else if (!run.end().remedy().isEmpty() && run.end().kind() != RunEnd.Kind.TRIPPED) {
      toDo.add(run.end().saw());
      toDo.add(run.end().remedy());
    }
    toDo.addAll(run.troubles());
    toDo.add(
        "Run again"
            + (input ? " on a supply that holds" : "")
            + ". It will be run "
            + (run.number() + 1)
            + ", and the paper will say so.");
    return toDo;
  }

  private static String others(RunFact r) {
    return Purposes.words(r.purpose()) + ", run " + r.number() + ", " + When.moment(r.started());
  }
}
