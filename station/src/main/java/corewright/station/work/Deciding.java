package corewright.station.work;

import static corewright.bench.triage.Proof.Coverage.COMPLETE;
import static corewright.bench.triage.Proof.Coverage.SOAK_OPEN;

import corewright.bench.diagnose.Group;
import corewright.bench.diagnose.Priors;
import corewright.bench.identify.Identifier;
import corewright.bench.inspect.Checklist;
import corewright.bench.inspect.Inspector;
import corewright.bench.inspect.Symptom;
import corewright.bench.inspect.Symptoms;
import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Dossier;
import corewright.bench.record.Hypothesis;
import corewright.bench.record.Identification;
import corewright.bench.record.Judgement;
import corewright.bench.triage.Build;
import corewright.bench.triage.Case;
import corewright.bench.triage.Cases;
import corewright.bench.triage.Cases.FaultPlace;
import corewright.bench.triage.Custody.Condition;
import corewright.bench.triage.Custody.Safety;
import corewright.bench.triage.Proof.Coverage;
import corewright.bench.triage.Sums;
import corewright.bench.triage.Triage;
import corewright.profiles.CheckItem;
import corewright.profiles.Family;
import corewright.profiles.Grade;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts what the record knows of one unit before the decision table. */
final class Deciding {
  /** Answers about agreements are kept beside those about cues, under this prefix. */
  static final String AGREED = "agreed/";

  /** What may as well be a driver channel, which hangs on the converter's output. */
  private static final Set<Group> OUTSIDE_PERHAPS =
      Set.of(Group.OUTPUT_LEAKAGE, Group.OUTPUT_SHORT);

  /** By so much less often a rebuild succeeds on a unit that was rebuilt before: 0.15 to 0.25. */
  private static final double REBUILT_BEFORE = 0.20;

  private Deciding() {}

  /**
   * @param priors how often each group is at fault in this shop
   */
  static Decision decide(Family family, Dossier dossier, Priors priors, LocalDate today) {
    Map<String, String> answers = Checklist.worst(family, dossier.answers());
    Agreed agreed = new Agreed(agreed(answers));
    Optional<Grade> grade =
        Inspector.of(family, dossier.answers(), dossier.identification()).grade();
    Symptoms symptoms = Symptoms.of(family, dossier.answers());
    Evidence evidence = new Evidence(dossier);
    Optional<Judgement> judged = evidence.judgement();
    Optional<Diagnosis> diagnosis = evidence.diagnosis(priors);
    Sums sums = sums(family, dossier.identification());
    Case unit =
        new Case(
            agreed.custody(safety(family, answers, evidence), condition(grade)),
            build(family, dossier.identification(), agreed, grade, place(diagnosis)),
            Cases.proof(
                judged,
                evidence.marginalAgain(),
                agreed.coverage(evidence.contradicts() ? SOAK_OPEN : coverage(symptoms))),
            agreed.terms(dossier.core().mode()),
            agreed.means(sums.economy(), sums.nextTest(diagnosis)));
    Decision decision =
        Triage.decide(
            unit,
            Cases.facts(
                    family,
                    Optional.of(known(family, dossier)),
                    judged,
                    evidence.finding(diagnosis),
                    diagnosis,
                    Optional.of(sums))
                .forbidding(blocking(family, answers)),
            today);
    return quoting(decision, symptoms.sentences(judged.flatMap(Judgement::verdict)));
  }

  /** What the key makes of it; where nobody has looked yet, that is what to look at first. */
  private static Identification known(Family family, Dossier dossier) {
    return dossier.identification().orElseGet(() -> Identifier.identify(family, dossier.answers()));
  }

  /** What was reported stands at the end of the reasons, added when the row is chosen already. */
  private static Decision quoting(Decision decision, List<String> reported) {
    return new Decision(
        decision.row(),
        decision.tableRevision(),
        decision.disposition(),
        decision.destination(),
        decision.sentence(),
        Stream.concat(decision.reasons().stream(), reported.stream()).toList(),
        decision.finding(),
        decision.diagnosis(),
        decision.question(),
        decision.owner(),
        decision.due(),
        decision.saw());
  }

  /** A complaint that names cold or heat is not answered by a pass at room temperature. */
  private static Coverage coverage(Symptoms symptoms) {
    if (symptoms.names(Symptom.COLD) || symptoms.names(Symptom.HOT)) {
      return Coverage.TEMPERATURE_OPEN;
    }
    return symptoms.names(Symptom.NOW_AND_THEN) ? SOAK_OPEN : COMPLETE;
  }

  private static Condition condition(Optional<Grade> grade) {
    return grade.filter(g -> g == Grade.D).isPresent() ? Condition.DAMAGED : Condition.SOUND;
  }

  /** A unit that was rebuilt before succeeds less often. */
  static Sums sums(Family family, Optional<Identification> identification) {
    Sums sums = Sums.of(family.economics());
    return identification.filter(i -> i.probably(Hypothesis.REBUILT_BEFORE)).isPresent()
        ? sums.with(Math.max(0, sums.p() - REBUILT_BEFORE))
        : sums;
  }

  /** A group of the converter lies in the part that can be rebuilt; a leak or short may not. */
  private static FaultPlace place(Optional<Diagnosis> diagnosis) {
    return diagnosis
        .flatMap(Diagnosis::named)
        .filter(c -> !OUTSIDE_PERHAPS.contains(Group.valueOf(c.group())))
        .map(c -> FaultPlace.INSIDE)
        .orElse(FaultPlace.UNKNOWN);
  }

  private static Build build(
      Family family,
      Optional<Identification> identification,
      Agreed agreed,
      Optional<Grade> grade,
      FaultPlace place) {
    if (agreed.foreign() || grade.filter(g -> g == Grade.X).isPresent()) {
      return Cases.foreign();
    }
    return identification
        .map(known -> Cases.build(family, known, place))
        .orElseGet(Cases::unidentified);
  }

  /**
   * Charged where the last run could not prove the discharge; wet, or forbidden for another reason,
   * where the checklist says so.
   */
  private static Safety safety(Family family, Map<String, String> answers, Evidence evidence) {
    if (evidence.last().filter(run -> !run.troubles().isEmpty()).isPresent()) {
      return Safety.CHARGED;
    }
    List<String> blocking = blockingItems(family, answers).map(CheckItem::id).toList();
    if (blocking.contains(CheckItem.MOISTURE)) {
      return Safety.WET;
    }
    return blocking.isEmpty() ? Safety.DISCHARGED : Safety.FORBIDDEN;
  }

  private static Map<String, String> agreed(Map<String, String> answers) {
    Map<String, String> agreed = new HashMap<>();
    answers.forEach(
        (cue, answer) -> {
          if (cue.startsWith(AGREED)) {
            agreed.put(cue.substring(AGREED.length()), answer);
          }
        });
    return agreed;
  }

  /** Blocking answers, as a run's guards ask for them. */
  static List<String> blocking(Family family, Map<String, String> answers) {
    return blockingItems(family, answers)
        .map(item -> item.id() + ": " + answers.get(item.id()))
        .toList();
  }

  private static Stream<CheckItem> blockingItems(Family family, Map<String, String> answers) {
    return family.checklist().stream()
        .filter(item -> item.blocks().contains(answers.getOrDefault(item.id(), "")));
  }
}
