package corewright.bench.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.files.Origin;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * Ten flow rates of NIST/SEMATECH e-Handbook 6.3.2.2 as the readings of ten shifts: centre 50.81,
 * limits 45.82 and 55.80 (printed, from memory).
 */
class BenchChartTest {
  private static final double[] FLOW = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};

  @Test
  void theEleventhShiftIsHeldAgainstTheTenBeforeIt() {
    BenchChart within = chart(0.1, 55.7);
    assertEquals(50.81, within.limits().orElseThrow().centre(), 1e-9);
    assertEquals(55.80, within.limits().orElseThrow().upperLimit(), 0.01);
    assertTrue(chart(0.1, 55.9).against().get(0).contains("one point beyond 3"));
    assertEquals(List.of(), chart(0.1, 51).against());
  }

  @Test
  void whatLiesWithinTheStatedUncertaintyIsSeenAndStopsNobody() {
    BenchChart wide = chart(6, 55.9);
    assertEquals(1, wide.signals().size());
    assertEquals(List.of(), wide.against());
  }

  @Test
  void fewerThanTenShiftsOrOneThatNeverMovesHaveNoLimits() {
    assertTrue(only(0.1, 1, 2, 3).limits().isEmpty());
    assertTrue(only(0.1, new double[20]).limits().isEmpty());
  }

  private static BenchChart chart(double u, double last) {
    return only(u, DoubleStream.concat(DoubleStream.of(FLOW), DoubleStream.of(last)).toArray());
  }

  private static BenchChart only(double u, double... values) {
    List<RunRecord> runs = DoubleStream.of(values).mapToObj(v -> run(v, u)).toList();
    return BenchChart.of(runs).stream()
        .filter(c -> c.id().equals("full:output"))
        .findFirst()
        .orElseThrow();
  }

  private static RunRecord run(double output_V, double u) {
    return run("Ada", "U-1", output_V, u);
  }

  static RunRecord run(String who, String tag, double output_V, double u) {
    Origin none = new Origin("test", "", "");
    MeasuredHold hold =
        new MeasuredHold(
            0,
            0,
            1,
            0,
            1,
            Map.of(Quantity.OUTPUT, Reading.of(output_V, u, Unit.VOLT)),
            List.of(),
            "no_edge");
    return new RunRecord(
        "r" + output_V,
        tag,
        "arrival",
        1,
        Source.BENCH,
        Instant.EPOCH,
        Instant.EPOCH,
        who,
        "bench-1",
        "",
        "p",
        1,
        none,
        none,
        Optional.empty(),
        List.of(),
        "",
        "",
        "",
        RunEnd.completed(1),
        List.of(),
        Optional.of(new MeasuredRun(1000, 1000, "test", List.of(hold), Map.of(), List.of())),
        new Judgement(Optional.of(Verdict.PASS), Optional.empty(), "", List.of(), List.of()));
  }
}
