package corewright.measures.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Reference;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Worked example of the AIAG MSA manual, 4th edition: data and printed results from memory, further
 * digits recomputed with numpy, analysis of variance also with R.
 */
class GaugeStudyTest {

  @Test
  void byAveragesAndRanges() {
    GaugeStudy study = GaugeStudy.byRanges(example());
    assertEquals(0.20188, study.equipment(), 3e-5); // printed with three-digit factors
    assertEquals(0.22963, study.appraisers(), 6e-5);
    assertEquals(0.30575, study.measuring(), 6e-5);
    assertEquals(1.10456, study.parts(), 1.2e-4);
    assertEquals(1.14610, study.total(), 1.2e-4);
    assertEquals(26.68, study.measuringPercent(), 0.006);
    assertEquals(5, study.distinctCategories());
  }

  /** The same data give 4 categories and not 5: not an error, see the manual. */
  @Test
  void byAnalysisOfVariance() {
    GaugeStudy study = GaugeStudy.byVariance(example());
    assertEquals(0.199933, study.equipment(), 5e-7);
    assertEquals(0.226838, study.appraisers(), 5e-7);
    assertEquals(0.302372, study.measuring(), 6e-7);
    assertEquals(1.042327, study.parts(), 5e-7);
    assertEquals(1.085300, study.total(), 5e-7);
    assertEquals(27.86, study.measuringPercent(), 0.005);
    assertEquals(4, study.distinctCategories());
  }

  @Test
  void refusesAStudyWithHoles() {
    assertThrows(IllegalArgumentException.class, () -> GaugeStudy.byRanges(new double[1][3][10]));
    double[][][] hole = example();
    hole[1][2] = new double[9];
    assertThrows(IllegalArgumentException.class, () -> GaugeStudy.byVariance(hole));
  }

  private static double[][][] example() {
    double[][][] values = new double[3][3][10];
    List<String> rows = Reference.lines("/reference/aiag_grr.csv");
    for (String row : rows.subList(1, rows.size())) {
      String[] cells = row.split(",", -1);
      values[cells[0].charAt(0) - 'A'][Integer.parseInt(cells[1]) - 1][
              Integer.parseInt(cells[2]) - 1] =
          Double.parseDouble(cells[3]);
    }
    return values;
  }
}
