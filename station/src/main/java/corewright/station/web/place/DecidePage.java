package corewright.station.web.place;

import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.measures.Chance;
import corewright.station.web.When;
import corewright.station.work.Agreeing;
import corewright.station.work.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What becomes of a unit, as the page shows it.
 *
 * @param decision the last one; empty where nothing was decided on this visit
 * @param finished what a passed final test means; empty where there is none
 * @param rests what it rests on, the most important first
 * @param destination where it goes, in words
 * @param next where one goes on, with the words of the button; empty where a question is open
 * @param held a question that a person put on the unit; empty otherwise
 */
public record DecidePage(
    Unit unit,
    Optional<Decision> decision,
    Optional<String> finished,
    Optional<RowRule> rule,
    Optional<SumPage> sums,
    List<Fact> rests,
    List<Group> groups,
    String destination,
    Optional<Next> next,
    Optional<Held> held,
    List<Asked> agreed,
    String due,
    boolean canStepBack) {

  /** One thing that a decision rests on. */
  public record Fact(String about, String words) {}

  /** A group of components that the readings point at. */
  public record Group(String chance, Diagnosis.Candidate candidate) {}

  /** Where one goes on. */
  public record Next(String words, String href) {}

  /** A question that is open. */
  public record Held(String question, String owner, String due, boolean overdue, Next where) {}

  /** Something that people say to the table. */
  public record Asked(Agreeing.Question question, String said) {}

  static DecidePage of(Workshop workshop, Dossier dossier) {
    Unit unit = Unit.of(workshop, dossier);
    Optional<Decision> decision = dossier.decision();
    Optional<String> finished = Finished.words(dossier);
    Map<String, String> said = workshop.agreeing().said(unit.tag());
    return new DecidePage(
        unit,
        decision,
        finished,
        decision.map(RowRule::of),
        SumPage.of(
            workshop.sums(unit.tag()),
            decision.map(Decision::disposition).orElse(Disposition.PENDING)),
        rests(dossier),
        groups(decision),
        decision
            .map(Decision::destination)
            .filter(d -> !d.isEmpty())
            .map(d -> "to " + d)
            .orElse(""),
        finished.isPresent()
            ? Optional.of(new Next("Hand it over", "/handover/" + unit.tag()))
            : decision.flatMap(d -> next(d.disposition(), unit.tag())),
        held(workshop, unit, decision),
        Agreeing.QUESTIONS.stream()
            .map(q -> new Asked(q, said.getOrDefault(q.name(), "")))
            .toList(),
        workshop.today().plusDays(7).toString(),
        unit.standing().life().after(corewright.bench.life.Act.STEP_BACK).isPresent());
  }

  private static List<Fact> rests(Dossier dossier) {
    List<Fact> facts = new ArrayList<>();
    dossier.runs().stream()
        .reduce((a, b) -> b)
        .ifPresent(
            run ->
                facts.add(
                    new Fact(
                        run.judgement().verdict().map(Enum::name).orElse("Test"),
                        run.judgement().reasons().stream()
                            .findFirst()
                            .orElse("every limit was met"))));
    dossier.identification().ifPresent(id -> facts.add(new Fact("Build", build(id))));
    return facts;
  }

  private static List<Group> groups(Optional<Decision> decision) {
    return decision
        .flatMap(Decision::diagnosis)
        .map(Diagnosis::candidates)
        .orElse(List.of())
        .stream()
        .map(c -> new Group(Chance.words(c.probability()), c))
        .toList();
  }

  private static String build(Identification id) {
    return id.variant()
        + " at "
        + Chance.words(id.posterior())
        + (id.conflicts().isEmpty()
            ? ", nothing against it"
            : "; " + id.conflicts().size() + " against it");
  }

  private static Optional<Next> next(Disposition disposition, String tag) {
    return switch (disposition) {
      case REBUILD -> Optional.of(new Next("Rebuild it", "/rebuild/" + tag));
      case REPLACE -> Optional.of(new Next("Replace it", "/handover/" + tag));
      case RETURN -> Optional.of(new Next("Give it back", "/handover/" + tag));
      case PENDING -> Optional.empty();
    };
  }

  private static Optional<Held> held(Workshop workshop, Unit unit, Optional<Decision> decision) {
    if (unit.standing().question().isEmpty()) {
      return Optional.empty();
    }
    String due = unit.standing().due();
    return Optional.of(
        new Held(
            unit.standing().question(),
            unit.standing().owner(),
            due.isEmpty() ? "" : When.day(LocalDate.parse(due)),
            !due.isEmpty() && due.compareTo(workshop.today().toString()) < 0,
            where(decision.map(Decision::row).orElse(""), unit.tag())));
  }

  /** Where an open question is answered; the rows of the table say whose it is. */
  private static Next where(String row, String tag) {
    return switch (row) {
      case "D13" -> new Next("Look at its condition again", "/build/" + tag + "/condition");
      case "D12", "D11" -> new Next("Make it safe", "/rebuild/" + tag);
      case "D20", "D55" -> new Next("See which build it is", "/build/" + tag);
      case "D30", "D31", "D32", "D33", "D40", "D41", "D50", "D78" ->
          new Next("To the bench", "/bench?tag=" + tag);
      default -> new Next("Say what was answered", "#agreed");
    };
  }
}
