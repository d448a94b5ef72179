package corewright.bench.log;

import corewright.bench.log.OutputJudge.Judged;
import corewright.bench.record.Qualifier;
import corewright.measures.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts one crank together: its conclusion, the reasons, and why they could be wrong. */
final class CrankWords {
  private CrankWords() {}

  static Crank crank(
      Attempt attempt,
      Bounds bounds,
      List<Supply> supplies,
      List<Judged> outputs,
      Optional<Qualifier> qualifier,
      Crank.Load load,
      Conclusion withoutOutput,
      List<Trace> traces) {
    List<Judged> ranked =
        outputs.stream()
            .sorted(Comparator.comparing((Judged j) -> rank(j.output().conclusion())))
            .toList();
    Conclusion conclusion =
        ranked.stream().findFirst().map(j -> j.output().conclusion()).orElse(withoutOutput);
    List<String> reasons = new ArrayList<>();
    ranked.forEach(j -> reasons.add(named(j, outputs.size()) + j.reason()));
    if (ranked.isEmpty()) {
      reasons.add("No column of this log is the output, measured in volts.");
    }
    supplies.forEach(s -> reasons.add(sentence(s)));
    return new Crank(
        bounds.start_s(),
        bounds.end_s(),
        shownBy(attempt),
        bounds.judged(),
        supplies,
        outputs.stream().map(Judged::output).toList(),
        qualifier,
        attempt.end() == Attempt.End.STARTED,
        load,
        conclusion,
        reasons,
        doubts(attempt, supplies, ranked, qualifier, load, conclusion),
        traces);
  }

  /** Of several outputs any fault counts, and only all good ones speak for the module. */
  private static int rank(Conclusion conclusion) {
    return switch (conclusion) {
      case SUPPORTS_FAULT -> 0;
      case VOID -> 1;
      case INCONCLUSIVE -> 2;
      case SUPPORTS_GOOD -> 3;
    };
  }

  private static String named(Judged j, int outputs) {
    return outputs > 1 ? "'" + j.output().name() + "': " : "";
  }

  private static String shownBy(Attempt attempt) {
    return switch (attempt.foundBy()) {
      case SPEED -> "engine speed";
      case SUPPLY -> "the supply alone";
      case PERSON -> "the window that was given";
    };
  }

  private static String sentence(Supply s) {
    String name = "Supply '" + s.name() + "': ";
    String seen =
        s.minimum()
            .map(
                m ->
                    "lowest level in the judged time "
                        + Figures.withU(m)
                        + s.qualifier()
                            .map(q -> ", " + q.name().toLowerCase(java.util.Locale.ROOT))
                            .orElse("")
                        + s.lowest()
                            .filter(l -> l.value() < m.value())
                            .map(l -> "; lowest sample of the whole crank " + Figures.withU(l))
                            .orElse(""))
            .orElse("no sample in the judged time");
    return name + seen + (s.remark().isEmpty() ? "." : "; " + s.remark() + ".");
  }

  private static List<String> doubts(
      Attempt attempt,
      List<Supply> supplies,
      List<Judged> outputs,
      Optional<Qualifier> qualifier,
      Crank.Load load,
      Conclusion conclusion) {
    List<String> doubts = new ArrayList<>();
    boolean speaks =
        conclusion == Conclusion.SUPPORTS_FAULT || conclusion == Conclusion.SUPPORTS_GOOD;
    if (qualifier.filter(q -> q == Qualifier.TOLERATED).isPresent() && speaks) {
      doubts.add("The supply was only tolerable: this supports and does not prove.");
    }
    if (supplies.stream().noneMatch(s -> s.nearness() >= 3) && !supplies.isEmpty()) {
      doubts.add(
          "No supply was measured at the module's own terminals: what its wiring and grounds lose"
              + " is not known.");
    }
    SupplyRank.doubt(supplies).ifPresent(doubts::add);
    supplies.stream().filter(s -> s.flat()).map(CrankWords::flat).forEach(doubts::add);
    if (attempt.foundBy() == Attempt.FoundBy.SUPPLY) {
      doubts.add(
          "Without engine speed the crank was found by the supply alone; another load looks"
              + " alike.");
    }
    if (attempt.end() == Attempt.End.CUT_OFF) {
      doubts.add("The log ends or pauses before the starter was let go.");
    }
    if (load == Crank.Load.NOT_SHOWN && conclusion == Conclusion.SUPPORTS_GOOD) {
      doubts.add("Nothing shows that fuel was injected: the output may not have been loaded.");
    }
    if (load == Crank.Load.INHIBITED && conclusion == Conclusion.SUPPORTS_FAULT) {
      doubts.add("No fuel was injected, so the output fell without its load.");
    }
    outputs.stream().findFirst().ifPresent(j -> samplingDoubts(j, supplies, conclusion, doubts));
    return doubts;
  }

  private static String flat(Supply s) {
    return "'"
        + s.name()
        + "' reads "
        + Figures.withU(s.minimum().orElseThrow())
        + " in every sample of the crank: its tool may cut it off there, or hold it.";
  }

  private static void samplingDoubts(
      Judged j, List<Supply> supplies, Conclusion conclusion, List<String> doubts) {
    OutputCase seen = j.seen();
    double silence_s =
        Math.max(
            j.output().longestSilence_s(),
            supplies.stream().mapToDouble(Supply::longestSilence_s).min().orElse(0));
    if (silence_s > 0.5 && seen.crank().judged().isPresent()) {
      doubts.add(
          "Up to "
              + Figures.number(silence_s, 1)
              + " s of the judged time passed without a sample: the supply is not known there.");
    }
    if (conclusion == Conclusion.SUPPORTS_FAULT && !seen.longEnough()) {
      doubts.add(
          "A strong pattern in a short record: "
              + seen.samples().size()
              + " distinct samples in the judged time.");
    }
    if (seen.held() > 1) {
      doubts.add(
          "The tool repeats each value of the output for about "
              + seen.held()
              + " rows; a repeated value counts once.");
    }
    if (seen.quantum_V() >= 0.4) {
      doubts.add("The output is logged in steps of " + Figures.number(seen.quantum_V(), 2) + " V.");
    }
    if (conclusion == Conclusion.SUPPORTS_GOOD) {
      doubts.add(
          "A log is too slow for the dip of a single injection: lost output capacitance does not"
              + " show in it, and cranking is a light load.");
    }
  }
}
