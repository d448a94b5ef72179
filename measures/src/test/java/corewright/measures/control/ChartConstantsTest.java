package corewright.measures.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Reference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartConstantsTest {

  /** Printed in every handbook (from memory); D4 of 3 is 2.5746, which many print as 2.574. */
  @ParameterizedTest
  @CsvSource({
    "2, 1.128, 0.853, 0.7979, 1.880, 0, 3.267",
    "3, 1.693, 0.888, 0.8862, 1.023, 0, 2.575",
    "5, 2.326, 0.864, 0.9400, 0.577, 0, 2.114",
    "10, 3.078, 0.797, 0.9727, 0.308, 0.223, 1.777",
  })
  void agreesWithThePrintedTables(
      int n, double d2, double d3, double c4, double a2, double lower, double upper) {
    ChartConstants c = ChartConstants.of(n);
    assertEquals(d2, c.d2(), 0.00051);
    assertEquals(d3, c.d3(), 0.00051);
    assertEquals(c4, c.c4(), 0.000051);
    assertEquals(a2, c.a2(), 0.00051);
    assertEquals(lower, c.lowerRange(), 0.00051);
    assertEquals(upper, c.upperRange(), 0.00051);
  }

  /** Eight digits for n = 2 … 25 (scipy quadrature). */
  @Test
  void agreesWithQuadrature() {
    double[][] rows = Reference.table("/reference/control_chart_constants.csv");
    assertEquals(24, rows.length);
    for (double[] row : rows) {
      ChartConstants c = ChartConstants.of((int) row[0]);
      assertEquals(row[1], c.d2(), 6e-9, "d2 of " + row[0]);
      assertEquals(row[2], c.d3(), 6e-9, "d3 of " + row[0]);
      assertEquals(row[3], c.c4(), 6e-9, "c4 of " + row[0]);
      assertEquals(row[5], c.a2(), 6e-9, "A2 of " + row[0]);
      assertEquals(row[6], c.a3(), 6e-9, "A3 of " + row[0]);
      assertEquals(row[13], c.lowerRange(), 1.2e-8, "D3 of " + row[0]);
      assertEquals(row[14], c.upperRange(), 1.2e-8, "D4 of " + row[0]);
      assertEquals(row[15], c.e2(), 6e-9, "E2 of " + row[0]);
    }
  }

  /** Closed forms for two values: 2/√π and √2·√(1 − 2/π). */
  @Test
  void agreesWithTheClosedFormsOfTwo() {
    ChartConstants two = ChartConstants.of(2);
    assertEquals(2 / Math.sqrt(Math.PI), two.d2(), 1e-13);
    assertEquals(Math.sqrt(2 - 4 / Math.PI), two.d3(), 1e-12);
    assertEquals(Math.sqrt(2), two.rootMeanSquareRange(), 1e-12);
    assertEquals(Math.sqrt(2 / Math.PI), two.c4(), 1e-14);
  }

  @Test
  void refusesOtherSizes() {
    assertThrows(IllegalArgumentException.class, () -> ChartConstants.of(1));
    assertThrows(IllegalArgumentException.class, () -> ChartConstants.of(26));
  }
}
