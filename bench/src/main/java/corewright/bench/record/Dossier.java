package corewright.bench.record;

import java.util.List;
import java.util.Optional;

/**
 * Everything one document is made from: a unit on one visit.
 *
 * @param visit counted from 1
 * @param runs in the order they were made; the last is the one the document speaks of
 * @param rebuild what was done to it, each a line; empty if it was not rebuilt
 * @param past what is not of this visit alone
 */
public record Dossier(
    Core core,
    int visit,
    List<CueAnswer> answers,
    Optional<Identification> identification,
    List<RunRecord> runs,
    Optional<Decision> decision,
    List<String> rebuild,
    Past past) {

  /** One of which nothing is known from before. */
  public Dossier(
      Core core,
      int visit,
      List<CueAnswer> answers,
      Optional<Identification> identification,
      List<RunRecord> runs,
      Optional<Decision> decision,
      List<String> rebuild) {
    this(core, visit, answers, identification, runs, decision, rebuild, Past.NONE);
  }

  public Dossier {
    answers = List.copyOf(answers);
    runs = List.copyOf(runs);
    rebuild = List.copyOf(rebuild);
  }
}
