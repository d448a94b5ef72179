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

class TypeKTest {

  /** NIST Monograph 175, printed to 1 µV. */
  @ParameterizedTest
  @CsvSource({
    "-200, -5.891",
    "-40, -1.527",
    "-30, -1.156",
    "-20, -0.778",
    "-10, -0.392",
    "0, 0.000",
    "10, 0.397",
    "20, 0.798",
    "25, 1.000",
    "30, 1.203",
    "40, 1.612",
    "50, 2.023",
    "60, 2.436",
    "70, 2.851",
    "80, 3.267",
    "90, 3.682",
    "100, 4.096",
    "110, 4.509",
    "120, 4.920",
    "130, 5.328",
    "140, 5.735",
    "150, 6.138",
    "200, 8.138",
    "500, 20.644",
    "1000, 41.276",
    "1372, 54.886"
  })
  void agreesWithThePrintedTable(double t, double mV) {
    assertEquals(mV, TypeK.emf_mV(t), 0.0005);
  }

  /** Six decimals at every degree (numpy, from the same coefficients found in several files). */
  @Test
  void agreesAtEveryDegreeBothWays() {
    double[][] rows = Reference.table("/reference/typeK_its90_1C.csv");
    assertTrue(rows.length > 500);
    for (double[] row : rows) {
      assertEquals(row[1], TypeK.emf_mV(row[0]), 5.1e-7, row[0] + " °C");
      if (row[0] > TypeK.LOWEST_C && row[0] < TypeK.HIGHEST_C) { // rounding leaves the range there
        double half = 5.1e-7 / TypeK.slope(row[0]);
        assertEquals(row[0], TypeK.temperature_C(row[1], 0), half, row[0] + " °C");
      }
    }
  }

  /**
   * Cold junction in millivolts. Adding 25 °C to what 3.096 mV would be against ice is 0.9 °C off:
   * a check that the mistake is not made.
   */
  @Test
  void addsTheColdJunctionAsVoltage() {
    double between = TypeK.emf_mV(100) - TypeK.emf_mV(25);
    assertEquals(100, TypeK.temperature_C(between, 25), 1e-9);
    // The mistake, by scipy; the reference function itself is 2 pV and not 0 at 0 °C.
    assertEquals(100.89234258, TypeK.temperature_C(between, 0) + 25, 6e-8);
    assertEquals(-40, TypeK.temperature_C(TypeK.emf_mV(-40) - TypeK.emf_mV(23), 23), 1e-9);
  }

  /** Seebeck coefficients of the reference function at 25 °C and 100 °C: 40.5 and 41.4 µV/K. */
  @Test
  void carriesUncertainty() {
    assertEquals(0.0405, TypeK.slope(25), 0.0001); // table: (1.203 − 0.798)/10 mV/K
    assertEquals(0.0414, TypeK.slope(100), 0.0001); // table: (4.509 − 3.682)/20 mV/K
    double emf_V = (TypeK.emf_mV(100) - TypeK.emf_mV(25)) / 1000;
    Measurement t =
        TypeK.temperature(
            new Measurement(emf_V, 4.14e-6, Unit.VOLT), new Measurement(25, 0.5, Unit.CELSIUS));
    assertEquals(100, t.value(), 1e-9);
    assertEquals(Math.hypot(0.1, 0.5 * 0.0405 / 0.0414), t.u(), 0.002);
  }

  @Test
  void refusesWhatIsNoTemperature() {
    IllegalArgumentException open =
        assertThrows(IllegalArgumentException.class, () -> TypeK.temperature_C(70, 25));
    assertTrue(open.getMessage().contains("open couple"));
    assertThrows(IllegalArgumentException.class, () -> TypeK.temperature_C(Double.NaN, 25));
    assertThrows(IllegalArgumentException.class, () -> TypeK.temperature_C(1, 5000));
    assertThrows(IllegalArgumentException.class, () -> TypeK.emf_mV(-201));
  }
}
