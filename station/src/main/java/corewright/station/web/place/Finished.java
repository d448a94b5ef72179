package corewright.station.web.place;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import java.util.Optional;

/** What a passed final test means for a unit that was rebuilt. The table does not ask for that. */
final class Finished {
  private static final String PROVED =
      "It was rebuilt and passed its final test. Next it is sealed.";
  private static final String MADE_UP =
      "It was rebuilt, and its final test met every limit on an emulated bench. That proves nothing"
          + " of a real unit: it cannot be sealed, leaves without a warranty, and its papers are"
          + " specimens.";

  private static final String ELSEWHERE =
      "It was rebuilt, and its final test met every limit, but was not measured on a bench of this"
          + " shop: it cannot be sealed. Test it on one.";

  private Finished() {}

  /** A sentence; empty where the unit was not rebuilt, or its last run is no passed final test. */
  static Optional<String> words(Dossier dossier) {
    return dossier.rebuild().isEmpty()
        ? Optional.empty()
        : dossier.runs().stream()
            .reduce((a, b) -> b)
            .filter(run -> run.purpose().equals("ship"))
            .filter(Finished::passed)
            .map(run -> words(run.source()));
  }

  private static String words(Source source) {
    return switch (source) {
      case BENCH -> PROVED;
      case EMULATED -> MADE_UP;
      case IMPORTED, BY_HAND -> ELSEWHERE;
    };
  }

  private static boolean passed(RunRecord run) {
    return run.judgement().verdict().filter(v -> v == Verdict.PASS).isPresent();
  }
}
