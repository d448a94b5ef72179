package corewright.bench.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.judge.BenchStudy.OfReading;
import corewright.bench.record.RunRecord;
import corewright.measures.control.GaugeStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Two units 10 V apart; Bob reads 0.5 V more than Ada; each run is 0.1 V high or low by turns. */
class BenchStudyTest {
  /** Sums of squares by hand: 8·0.1² in 5 degrees of freedom, 2·0.5² and 2·10² in one each. */
  @Test
  void peopleRepeatsAndUnitsAreToldApart() {
    Map<String, List<RunRecord>> runs = new TreeMap<>();
    for (String who : List.of("Ada", "Bob")) {
      for (String tag : List.of("U-1", "U-2")) {
        for (int k = 0; k < 2; k++) {
          double volts =
              40 + (tag.equals("U-2") ? 10 : 0) + (who.equals("Bob") ? 0.5 : 0) + 0.2 * k - 0.1;
          runs.computeIfAbsent(tag, t -> new ArrayList<>())
              .add(BenchChartTest.run(who, tag, volts, 0.01));
        }
      }
    }
    runs.get("U-1").add(0, BenchChartTest.run("Eve", "U-1", 0, 1)); // not every unit: left out
    runs.get("U-1").add(0, BenchChartTest.run("Ada", "U-1", 99, 1)); // the last runs count
    BenchStudy study = BenchStudy.of("p", runs);
    assertEquals(List.of("Ada", "Bob"), study.people());
    assertEquals(2, study.times());
    GaugeStudy output =
        study.readings().stream()
            .filter(r -> r.id().equals("full:output"))
            .map(OfReading::study)
            .findFirst()
            .orElseThrow();
    double rest = 8 * 0.01 / 5;
    assertEquals(Math.sqrt(rest), output.equipment(), 1e-9);
    assertEquals(Math.sqrt((2 * 0.25 - rest) / 4), output.appraisers(), 1e-9);
    assertEquals(Math.sqrt((2 * 100 - rest) / 4), output.parts(), 1e-9);
  }

  @Test
  void whatIsStillToBeRunIsSaidByNameAndUnit() {
    RunRecord ada = BenchChartTest.run("Ada", "U-1", 48, 0.01);
    BenchStudy study = BenchStudy.of("p", Map.of("U-1", List.of(ada, ada), "U-2", List.of(ada)));
    assertEquals(List.of(), study.readings());
    assertEquals("Ada has run U-2 once.", study.missing().get(1));
    assertEquals(
        "Two reference units of one profile are needed, and there is 1.",
        BenchStudy.of("p", Map.of("U-1", List.of(ada))).missing().get(0));
  }
}
