package corewright.station.work;

import corewright.bench.identify.Identifier;
import corewright.bench.inspect.Inspection;
import corewright.bench.inspect.Inspector;
import corewright.bench.inspect.Symptoms;
import corewright.bench.record.Dossier;
import corewright.bench.record.Verdict;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Grade;
import corewright.reports.ledger.Ledger;
import java.util.List;
import java.util.Optional;

/** In which condition a unit came, by the checklist. */
public final class Inspecting {
  private final Catalogue catalogue;
  private final Ledger ledger;

  Inspecting(Catalogue catalogue, Ledger ledger) {
    this.catalogue = catalogue;
    this.ledger = ledger;
  }

  /**
   * What came of it.
   *
   * @param reported what the symptoms point at, set against the bench, sentences
   * @param other the grade that a person gave, where it is not the checklist's
   */
  public record Result(
      Dossier dossier,
      Inspection inspection,
      Symptoms symptoms,
      List<String> reported,
      Optional<Grade> other) {}

  /** Reads the answers of the present visit. Writes nothing: a grade is given by a person. */
  public Result of(String tag) {
    Dossier dossier = ledger.dossier(tag);
    Family family = catalogue.family(dossier.core().family());
    Inspection inspection =
        Inspector.of(
            family, dossier.answers(), Optional.of(Identifier.identify(family, dossier.answers())));
    String recorded = ledger.lives().standing(tag).grade();
    Optional<Grade> other =
        recorded.isEmpty()
            ? Optional.empty()
            : Optional.of(Grade.valueOf(recorded))
                .filter(g -> !Optional.of(g).equals(inspection.grade()));
    Symptoms symptoms = Symptoms.of(family, dossier.answers());
    Optional<Verdict> bench =
        dossier.runs().stream().reduce((a, b) -> b).flatMap(r -> r.judgement().verdict());
    return new Result(dossier, inspection, symptoms, symptoms.sentences(bench), other);
  }
}
