package corewright.station.work;

import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunRecord;
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
import java.util.stream.Stream;

/** Puts what the record knows of one unit before the decision table. */
final class Deciding {
  /** Answers about agreements are kept beside those about cues, under this prefix. */
  static final String AGREED = "agreed/";

  private Deciding() {}

  static Decision decide(Family family, Dossier dossier, LocalDate today) {
    Map<String, String> answers = new HashMap<>();
    dossier.answers().forEach(a -> answers.put(a.cue(), a.answer()));
    Agreed agreed = new Agreed(agreed(answers));
    Optional<Judgement> judged =
        dossier.runs().isEmpty() ? Optional.empty() : Optional.of(last(dossier).judgement());
    Sums sums = Sums.of(family.economics());
    Case unit =
        new Case(
            agreed.custody(safety(family, answers, dossier)),
            build(family, dossier.identification(), agreed),
            Cases.proof(judged, false, agreed.coverage()),
            agreed.terms(dossier.core().mode()),
            agreed.means(sums.economy()));
    return Triage.decide(
        unit,
        Cases.facts(family, dossier.identification(), judged, Optional.of(sums))
            .forbidding(blocking(family, answers)),
        today);
  }

  private static RunRecord last(Dossier dossier) {
    return dossier.runs().get(dossier.runs().size() - 1);
  }

  private static Build build(
      Family family, Optional<Identification> identification, Agreed agreed) {
    if (agreed.foreign() || identification.isEmpty()) {
      return Cases.foreign();
    }
    return Cases.build(family, identification.get(), FaultPlace.UNKNOWN);
  }

  /**
   * Charged where the last run could not prove the discharge; wet, or forbidden for another reason,
   * where the checklist says so.
   */
  private static Safety safety(Family family, Map<String, String> answers, Dossier dossier) {
    if (!dossier.runs().isEmpty() && !last(dossier).troubles().isEmpty()) {
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
