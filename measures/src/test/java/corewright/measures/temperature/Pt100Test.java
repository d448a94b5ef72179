package corewright.measures.temperature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Measurement;
import corewright.measures.Reference;
import corewright.measures.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Pt100Test {

  /** IEC 60751, table printed to 0.01 Ω (from memory). */
  @ParameterizedTest
  @CsvSource({
    "-200, 18.52",
    "-40, 84.27",
    "-20, 92.16",
    "0, 100.00",
    "20, 107.79",
    "50, 119.40",
    "100, 138.51",
    "150, 157.33",
    "850, 390.48"
  })
  void agreesWithThePrintedTable(double t, double ohm) {
    assertEquals(ohm, Pt100.resistance_ohm(t), 0.00501);
  }

  /** Six decimals at every degree (numpy, from the coefficients of IEC 60751). */
  @Test
  void agreesAtEveryDegreeBothWays() {
    double[][] rows = Reference.table("/reference/pt100_iec60751.csv");
    assertTrue(rows.length > 300);
    for (double[] row : rows) {
      assertEquals(row[1], Pt100.resistance_ohm(row[0]), 5.1e-7, row[0] + " °C");
      assertEquals(row[0], Pt100.temperature_C(Pt100.resistance_ohm(row[0])), 1e-9, row[0] + " °C");
    }
  }

  /**
   * IEC 60751 tolerances (from memory): class A ± 0.35 °C at 100 °C, class B ± 0.50 °C at −40 °C.
   */
  @Test
  void carriesUncertainty() {
    assertEquals(0.35, Pt100.Tolerance.A.halfWidth_C(100), 1e-12);
    assertEquals(0.50, Pt100.Tolerance.B.halfWidth_C(-40), 1e-12);
    assertEquals(0.27, Pt100.Tolerance.AA.halfWidth_C(100), 1e-12);
    assertEquals(1.60, Pt100.Tolerance.C.halfWidth_C(100), 1e-12);
    Measurement t =
        Pt100.temperature(new Measurement(138.5055, 0.037928, Unit.OHM), Pt100.Tolerance.A);
    assertEquals(100, t.value(), 1e-9);
    assertEquals(Math.hypot(0.1, 0.35 / Math.sqrt(3)), t.u(), 1e-6); // dR/dt 0.37928 Ω/K
  }

  @Test
  void refusesAnOpenOrShortedSensor() {
    assertThrows(IllegalArgumentException.class, () -> Pt100.temperature_C(1e6));
    assertThrows(IllegalArgumentException.class, () -> Pt100.temperature_C(0.3));
    assertThrows(IllegalArgumentException.class, () -> Pt100.temperature_C(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Pt100.resistance_ohm(900));
  }
}
