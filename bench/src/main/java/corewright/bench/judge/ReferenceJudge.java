package corewright.bench.judge;

import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.fixtures.describe.ReferenceUnit;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the run of a reference unit says of its bench: whether the unit came to what it is known to
 * be, reads as at first, and stays on its charts. Pure.
 */
public final class ReferenceJudge {
  private ReferenceJudge() {}

  /**
   * What speaks against the bench, each a sentence; empty if it is as it was.
   *
   * @param proven earlier runs of the unit with this profile that spoke for this bench, since it
   *     was calibrated last, the oldest first
   * @param named the group that the run points at
   */
  public static List<String> against(
      ReferenceUnit unit,
      List<RunRecord> proven,
      RunRecord now,
      Optional<String> named,
      Family family) {
    List<String> doubts = new ArrayList<>();
    String verdict = now.judgement().verdict().map(Verdict::name).orElse("no verdict");
    if (!verdict.equals(unit.kind().verdict())) {
      doubts.add(
          "Unit "
              + unit.tag()
              + " is "
              + unit.kind().words()
              + " and must come to "
              + unit.kind().verdict()
              + ": it came to "
              + verdict
              + ".");
    }
    if (!unit.group().isEmpty() && !named.equals(Optional.of(unit.group()))) {
      doubts.add(
          "The fault of unit "
              + unit.tag()
              + " is "
              + unit.group()
              + ", and the run names "
              + named.orElse("none")
              + ".");
    }
    proven.stream()
        .findFirst()
        .map(first -> ReferenceCheck.doubts(measured(first), measured(now), family))
        .ifPresent(doubts::addAll);
    List<RunRecord> all = new ArrayList<>(proven);
    all.add(now);
    BenchChart.of(all).stream().flatMap(chart -> chart.against().stream()).forEach(doubts::add);
    return List.copyOf(doubts);
  }

  private static MeasuredRun measured(RunRecord run) {
    return run.measured()
        .orElseGet(() -> new MeasuredRun(0, 0, "", List.of(), Map.of(), List.of()));
  }
}
