package corewright.station.work;

import static corewright.bench.triage.Proof.Coverage.COMPLETE;
import static corewright.bench.triage.Proof.Coverage.SOAK_OPEN;

import corewright.bench.diagnose.Group;
import corewright.bench.diagnose.Priors;
import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.Judgement;
import corewright.bench.triage.Build;
import corewright.bench.triage.Case;
import corewright.bench.triage.Cases;
import corewright.bench.triage.Cases.FaultPlace;
import corewright.bench.triage.Custody.Safety;
import corewright.bench.triage.Sums;
import corewright.bench.triage.Triage;
import corewright.profiles.CheckItem;
import corewright.profiles.Family;
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
  private static final Set<Group> OUTSIDE_PERHAPS = Set.of(Group.OUTPUT_LEAKAGE, Group.SHORT);

  private Deciding() {}

  static Decision decide(Family family, Dossier dossier, LocalDate today) {
    Map<String, String> answers = new HashMap<>();
    dossier.answers().forEach(a -> answers.put(a.cue(), a.answer()));
    Agreed agreed = new Agreed(agreed(answers));
    Evidence evidence = new Evidence(dossier);
    Optional<Judgement> judged = evidence.judgement();
    Optional<Diagnosis> diagnosis = evidence.diagnosis(Priors.ofTrade());
    Sums sums = Sums.of(family.economics());
    Case unit =
        new Case(
            agreed.custody(safety(family, answers, evidence)),
            build(family, dossier.identification(), agreed, place(diagnosis)),
            Cases.proof(
                judged,
                evidence.marginalAgain(),
                agreed.coverage(evidence.contradicts() ? SOAK_OPEN : COMPLETE)),
            agreed.terms(dossier.core().mode()),
            agreed.means(sums.economy(), sums.nextTest(diagnosis)));
    return Triage.decide(
        unit,
        Cases.facts(
                family,
                dossier.identification(),
                judged,
                evidence.finding(diagnosis),
                diagnosis,
                Optional.of(sums))
            .forbidding(blocking(family, answers)),
        today);
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
      Family family, Optional<Identification> identification, Agreed agreed, FaultPlace place) {
    if (agreed.foreign()) {
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
